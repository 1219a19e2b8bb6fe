import type { LabelWord } from '../lesson/label-words.ts'

/** Whether a figure is to have a kind of numbers or names. */
export type Picked = (word: LabelWord) => boolean

/** What `label=` picks: everything where it is not written, or says `all`; nothing where it says `none`. */
export const picked =
  (labels: readonly LabelWord[] | undefined): Picked =>
  (word) =>
    labels === undefined || (!labels.includes('none') && (labels.includes('all') || labels.includes(word)))
