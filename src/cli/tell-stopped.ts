import type { CuttingPlan } from '../workshop/cutting/cutting.ts'
import type { Options } from './flags.ts'
import type { Outside } from './outside.ts'
import { stoppedText, type TimeLimit } from './time-limit.ts'

/** Tells how good a plan is whose search ran out of time. In JSON the bounds of each plan say it. */
export function tellStopped(
  { aborted }: TimeLimit,
  plan: Pick<CuttingPlan, 'plans' | 'short'>,
  { quiet, json }: Options,
  { stderr }: Outside,
): void {
  const text = aborted && !quiet && !json ? stoppedText(plan) : undefined
  if (text !== undefined) stderr(text)
}
