import type { Fold } from '../../card/structure.ts'
import type { Picked } from '../picked.ts'
import { type FlatParts, labelOfFold } from './parts.ts'

/** Whether a figure has the numbers of the scores of one fold: `scores` picks both. */
export const picksFold = (has: Picked, fold: Fold): boolean => has('scores') || has(labelOfFold[fold])

/**
 * A flat piece with what is measured on it, as far as it is picked: every line of it is still drawn. Between two marks
 * that are no concern of the step, the one that is stands alone on the ruler.
 */
export const measuredParts = (parts: FlatParts, has: Picked): FlatParts => ({
  ...parts,
  scores: parts.scores.filter(({ fold }) => picksFold(has, fold)),
  slants: parts.slants.filter(({ fold }) => picksFold(has, fold)),
  inner: parts.inner.filter(({ label }) =>
    label === 'valleys' || label === 'mountains' ? has('scores') || has(label) : has(label),
  ),
})
