import type { Element } from 'hast'
import { s } from 'hastscript'
import { rectangle } from '../card/strip.ts'
import type { Piece, Polygon, Segment, Structure } from '../card/structure.ts'
import { numberIn } from '../length/length.ts'
import { colours } from './ink.ts'
import { num } from './num.ts'

/** The room of a small outline, in mm at print size: the largest piece of a card fills it. */
const room = { width: 26, height: 11 } as const
/** Where the tallest piece stands upright there is room beside it, and it may be taller. */
const uprightHeight = 16

/** Millimetres on paper for one of a piece, the same for all pieces given, so that they compare. */
export function outlineScale(pieces: readonly Piece[]): number {
  const sizes = pieces.map(({ size }) => [numberIn(size.width, 'mm'), numberIn(size.height, 'mm')] as const)
  const [width, height] = [Math.max(...sizes.map(([w]) => w)), Math.max(...sizes.map(([, h]) => h))]
  return Math.min(room.width / width, (height > width ? uprightHeight : room.height) / height)
}

const edge = 0.25
const dash = { valley: '1.2 0.7', mountain: '2.2 0.5 0.3 0.5' } as const

/**
 * The small outline of a piece, beside its size in the cutting table: its edge, its windows and slits, and its scores
 * as dashes. Everything it shows is said in its row, so it has no text of its own.
 *
 * @param scale mm on paper for one mm of the piece.
 * @param tint the colour of its stock.
 */
export function outlineSvg(
  piece: Piece,
  { plates, hinges }: Pick<Structure, 'plates' | 'hinges'>,
  scale: number,
  tint: string,
): Element {
  const [width, height] = [
    numberIn(piece.size.width, 'mm') * scale,
    numberIn(piece.size.height, 'mm') * scale,
  ]
  const at = ({ x, y }: Polygon[number]): string =>
    `${num(numberIn(x, 'mm') * scale)} ${num(height - numberIn(y, 'mm') * scale)}`
  const loop = (polygon: Polygon): string => `M${polygon.map(at).join('L')}Z`
  const stroke = (lines: readonly Segment[]): string =>
    lines.map((l) => `M${at(l.from)}L${at(l.to)}`).join('')
  const own = plates.filter((plate) => plate.piece === piece.name)
  const names = new Set(own.map((plate) => plate.name))
  // Several pieces of one kind lie over one another here: once is enough.
  const faces = [...new Set(own.map((plate) => [plate.outline, ...plate.holes].map(loop).join('')))]
  // A loose piece is no part of the mechanism: all that is known of it is its size.
  if (faces.length === 0) faces.push(loop(rectangle(piece.size)))
  const creases = hinges.filter(({ between }) => between.some((name) => names.has(name)))
  const lines = (fold: 'valley' | 'mountain'): string =>
    stroke(creases.filter((hinge) => hinge.fold === fold).map((hinge) => hinge.line))
  const path = (d: string, properties: Record<string, string>): Element[] =>
    d === '' ? [] : [s('path', { d, fill: 'none', stroke: colours.ink, ...properties })]
  const rim = edge
  return s(
    'svg',
    {
      className: ['outline'],
      width: `${num(width + 2 * rim)}mm`,
      height: `${num(height + 2 * rim)}mm`,
      viewBox: [-rim, -rim, width + 2 * rim, height + 2 * rim].map((n) => num(n)).join(' '),
      ariaHidden: 'true',
      focusable: 'false',
    },
    ...path(faces.join(''), {
      fill: tint,
      'fill-rule': 'evenodd',
      'stroke-width': num(edge),
      'stroke-linejoin': 'round',
    }),
    // Two panels meet at a score: their edges there are no cuts.
    ...path(stroke(creases.map((hinge) => hinge.line)), { stroke: tint, 'stroke-width': num(edge * 1.6) }),
    ...path(lines('valley'), { 'stroke-width': '0.22', 'stroke-dasharray': dash.valley }),
    ...path(lines('mountain'), { 'stroke-width': '0.22', 'stroke-dasharray': dash.mountain }),
    ...path(stroke(piece.cuts), { 'stroke-width': num(edge) }),
  )
}
