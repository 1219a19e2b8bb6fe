import type { LabelWord } from '../label-words.ts'
import type { FigureKind } from '../nodes.ts'

/** The numbers and names that each kind of figure has, so that `label=` can pick from them. */
const own: Readonly<Record<FigureKind, readonly LabelWord[]>> = {
  flat: ['size', 'scores', 'valleys', 'mountains', 'cuts', 'marks', 'names'],
  place: ['size', 'borders', 'names', 'thickness'],
  folding: ['names'],
  closed: ['size', 'thickness', 'names'],
  standing: ['size'],
  edge: ['size', 'thickness', 'names'],
  apart: ['size', 'names'],
  lettering: ['size', 'marks', 'gap'],
  sheet: ['size', 'cuts', 'names'],
  envelope: ['size', 'scores', 'valleys', 'mountains', 'cuts', 'names'],
}

/** What `label=` can say in a figure of a kind: its own words, and `all` and `none`. */
export const labelsOfKind = (kind: FigureKind): readonly LabelWord[] => [...own[kind], 'all', 'none']
