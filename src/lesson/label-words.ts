/** What `label=` of a figure can pick: kinds of numbers and names, or `all` or `none` of them. */
export const labelWords = [
  'size',
  'scores',
  'valleys',
  'mountains',
  'cuts',
  'borders',
  'marks',
  'gap',
  'names',
  'thickness',
  'all',
  'none',
] as const
export type LabelWord = (typeof labelWords)[number]
