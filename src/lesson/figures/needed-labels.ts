import type { FigureTarget } from '../figure-target.ts'
import type { LabelWord } from '../label-words.ts'
import type { FigureKind } from '../nodes.ts'
import type { Said } from './said.ts'

/**
 * The numbers that a figure needs in a step, from what the step says of the piece that it shows:
 *
 * - `flat`: a step that says `{base.mountains}` gets the numbers of the mountains; one that says `{base.scores}`, those of
 *   all scores. Corners and slits have their numbers where the step cuts. The size stays, because it tells which way the
 *   sheet lies.
 * - `place`: how far from the edges, always; the size only where the step says it, or says no number of the piece at all.
 *
 * A number that another step needs is left out rather than made plain: on a ruler it is one mark more to get wrong.
 *
 * @returns undefined for everything that the figure has: the step says nothing of the piece that tells what it needs.
 */
export function neededLabels(
  said: Said | undefined,
  show: FigureKind,
  { card: { card }, of }: FigureTarget,
): readonly LabelWord[] | undefined {
  if (!said) return undefined
  if (show === 'flat') return flatLabels(partsSaid(said, card.name, of ?? 'base'), said.cuts)
  if (show === 'place' && of !== undefined) return placeLabels(partsSaid(said, card.name, of))
  return undefined
}

/** What a step asks of a piece: `mountains` of `{base.mountains}`, and of `{box.base.mountains}` in the card `box`. */
const partsSaid = ({ paths }: Said, card: string, piece: string): string[] =>
  paths.flatMap((path) => {
    const [first, second, third] = path
    const part = first === piece ? second : first === card && second === piece ? third : undefined
    return part === undefined ? [] : [part]
  })

/** The words that pick the scores which a part of a piece says: `uprights` and the like are some of both folds. */
const scoresOf: Readonly<Record<string, LabelWord>> = {
  scores: 'scores',
  uprights: 'scores',
  levels: 'scores',
  slants: 'scores',
  valleys: 'valleys',
  mountains: 'mountains',
}

function flatLabels(parts: readonly string[], cuts: boolean): LabelWord[] | undefined {
  const scores = parts.flatMap((part) => scoresOf[part] ?? [])
  if (scores.length === 0) return undefined
  return ['size', 'names', ...new Set(scores), ...(cuts ? (['cuts'] as const) : [])]
}

function placeLabels(parts: readonly string[]): LabelWord[] | undefined {
  if (parts.length === 0 || parts.some((part) => sizes.has(part))) return undefined
  return ['names', 'borders', 'thickness']
}

const sizes: ReadonlySet<string> = new Set(['size', 'width', 'height'])
