import { hingesOf } from '../../card/scores.ts'
import type { Action, Thing } from '../actions/action.ts'
import { type Course, stepOf } from '../actions/course.ts'
import type { ProvenCard } from '../lesson.ts'
import type { FigureKind } from '../nodes.ts'
import type { Named } from '../prose/named.ts'
import { wantedOfCard } from './wanted-of-card.ts'

/** A figure that a step could have. */
export interface Wanted {
  readonly step: number
  readonly show: FigureKind
  readonly card: ProvenCard
  /** The piece it shows; missing for the whole card. */
  readonly of?: string
}

/** Of what one step could have, the first of these is the one it needs most. */
const order: readonly FigureKind[] = [
  'envelope',
  'flat',
  'lettering',
  'place',
  'folding',
  'standing',
  'closed',
]

/**
 * The figures that the steps of a lesson could have, the most needed of each step first.
 *
 * - `flat` where a piece with scores is scored first, and where one with slits, windows or corners is cut first. A plain
 *   piece has nothing to draw.
 * - `place` where a span is stuck, or a layer with uneven borders or on foam. One with the same border all round is told
 *   by its one number.
 * - `folding` where the one sheet of a card that folds is folded first, if it has more than one crease.
 * - `lettering` where letters are set out, `envelope` where the envelope is made.
 * - `standing` in the last step that stands the card up, `closed` in the last one that shuts it.
 */
export function wantedFigures(course: Course, cards: readonly ProvenCard[]): Wanted[] {
  const wanted = course.actions.flatMap((action) =>
    meant(action, course).flatMap((thing) => forThing(action, thing, course, cards)),
  )
  const all = [...wanted, ...cards.flatMap((card) => wantedOfCard(course, card, cards))]
  return all.toSorted((a, b) => a.step - b.step || order.indexOf(a.show) - order.indexOf(b.show))
}

/** What is meant without doubt, or by a word such as `it` in a step that names it; what is folded has been named before. */
const meant = (action: Action, { actions }: Course): Thing[] =>
  action.objects.filter(
    ({ named, sure }) =>
      sure ||
      (action.says !== 'name' &&
        (action.kind === 'fold' ||
          actions.some(
            (other) =>
              stepOf(other) === stepOf(action) &&
              [...other.objects, ...other.onto].some((thing) => thing.sure && thing.named === named),
          ))),
  )

function forThing(
  action: Action,
  { named, sure }: Thing,
  course: Course,
  cards: readonly ProvenCard[],
): Wanted[] {
  const step = stepOf(action)
  const card = cards.find((one) => one.card === named.card)
  if (!card) return []
  const { kind } = action
  const piece = course.pieceOf(named)
  if (!piece) return []
  if (kind === 'score' || kind === 'cut')
    return isDrawnFlat(action, piece, course) ? [{ step, show: 'flat', card, of: piece.name }] : []
  if (kind === 'stick' || kind === 'lay')
    return isWorthPlacing(piece, card) && isItself(action, piece, sure)
      ? [{ step, show: 'place', card, of: piece.name }]
      : []
  return kind === 'fold' && isFoldedAlone(piece) ? [{ step, show: 'folding', card }] : []
}

/** Whether a piece is the only one of its card that folds, and has more than one crease. */
export function isFoldedAlone({ name, card: { structure } }: Pick<Named, 'name' | 'card'>): boolean {
  const folded = structure.pieces.filter(
    (piece) => piece.kind === 'base' && hingesOf(structure, piece.name).length > 0,
  )
  return folded.length === 1 && folded[0]?.name === name && hingesOf(structure, name).length > 1
}

/** `Stick it on`, and not `stick them down`, of a piece that there is one of, nor `put the edges of it down`. */
function isItself({ sentence, start, end }: Action, { name, card }: Named, sure: boolean): boolean {
  const count = card.structure.pieces.find((piece) => piece.name === name)?.count ?? 1
  const [, next = ''] = sentence.words.slice(start, end).toLowerCase().split(/\s+/)
  const isSeveral = count > 1 || /s$/i.test(name)
  return sure || next === 'it' || (isSeveral && ['them', 'one', 'each', 'both'].includes(next))
}

/** Whether a cut or a score is the one that a drawing of the flat piece is for. */
function isDrawnFlat({ kind }: Action, piece: Named, course: Course): boolean {
  const { structure } = piece.card
  const hasCuts = structure.pieces.some(({ name, cuts }) => name === piece.name && cuts.length > 0)
  if (hingesOf(structure, piece.name).length === 0) return kind === 'cut' && hasCuts
  const isScored = course.actions.some(
    (action) =>
      action.kind === 'score' && meant(action, course).some(({ named }) => course.pieceOf(named) === piece),
  )
  return kind === 'score' || !isScored
}

/** Whether where it goes takes more than one number to say. */
function isWorthPlacing({ name }: Named, { card, proof }: ProvenCard): boolean {
  const layer = card.layers.find((one) => one.name === name)
  const bonds = card.structure.bonds.filter(({ plate }) =>
    layer ? layer.plates.includes(plate) : plate === name,
  )
  if (!layer)
    return (
      proof.standing !== undefined &&
      bonds.length > 0 &&
      card.structure.pieces.some((piece) => piece.name === name && piece.kind === 'span')
    )
  const { left, right, top, bottom } = layer.border
  const isEven = [right, top, bottom].every((side) => side.equals(left))
  return !isEven || bonds.some(({ height }) => height.gt(0))
}
