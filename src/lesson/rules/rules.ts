import { classTime, untimedStep } from './class-time.ts'
import { crowdedStep } from './crowded-step.ts'
import { figurePiece } from './figure-piece.ts'
import { looseMeasure } from './loose-measure.ts'
import { looseTime } from './loose-time.ts'
import { neverCut } from './never-cut.ts'
import { neverUsed } from './never-used.ts'
import { noCard } from './no-card.ts'
import { noCaution } from './no-caution.ts'
import { noEnvelopeSteps } from './no-envelope-steps.ts'
import { noSteps } from './no-steps.ts'
import type { Rule, RuleDoc } from './rule.ts'
import { scoreUnsaid } from './score-unsaid.ts'
import { sheetStock } from './sheet-stock.ts'
import { stepWithoutFigure } from './step-without-figure.ts'
import { stuckTooEarly } from './stuck-too-early.ts'
import { unlistedTool } from './unlisted-tool.ts'
import { unusedSupply } from './unused-supply.ts'
import { usedBeforeCut } from './used-before-cut.ts'

/** Every rule about a lesson as a whole. */
export const rules: readonly Rule[] = [
  noCard,
  noSteps,
  figurePiece,
  sheetStock,
  noCaution,
  unlistedTool,
  unusedSupply,
  classTime,
  untimedStep,
  usedBeforeCut,
  neverCut,
  neverUsed,
  scoreUnsaid,
  stuckTooEarly,
  crowdedStep,
  noEnvelopeSteps,
  stepWithoutFigure,
  looseMeasure,
  looseTime,
]

/** What the manual says of them, by name. */
export const ruleDocs: readonly RuleDoc[] = rules.flatMap(({ docs }) => docs)
