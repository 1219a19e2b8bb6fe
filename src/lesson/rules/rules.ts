import { figurePiece } from './figure-piece.ts'
import { noCard } from './no-card.ts'
import { noCaution } from './no-caution.ts'
import { noSteps } from './no-steps.ts'
import type { Rule, RuleDoc } from './rule.ts'

/** Every rule about a lesson as a whole. */
export const rules: readonly Rule[] = [noCard, noSteps, figurePiece, noCaution]

/** What the manual says of them, by name. */
export const ruleDocs: readonly RuleDoc[] = rules.flatMap(({ docs }) => docs)
