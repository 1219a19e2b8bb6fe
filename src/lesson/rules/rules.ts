import { classTime, untimedStep } from './class-time.ts'
import { figurePiece } from './figure-piece.ts'
import { noCard } from './no-card.ts'
import { noCaution } from './no-caution.ts'
import { noSteps } from './no-steps.ts'
import type { Rule, RuleDoc } from './rule.ts'
import { unlistedTool } from './unlisted-tool.ts'
import { unusedSupply } from './unused-supply.ts'

/** Every rule about a lesson as a whole. */
export const rules: readonly Rule[] = [
  noCard,
  noSteps,
  figurePiece,
  noCaution,
  unlistedTool,
  unusedSupply,
  classTime,
  untimedStep,
]

/** What the manual says of them, by name. */
export const ruleDocs: readonly RuleDoc[] = rules.flatMap(({ docs }) => docs)
