import type { Element } from 'hast'
import { s } from 'hastscript'
import type { Card } from '../card/card.ts'
import { hingesOf } from '../card/scores.ts'
import { boxOf } from './box.ts'
import { weights } from './ink.ts'
import { creaseStroke } from './legend.ts'
import { area, line, type Mark } from './mark.ts'
import { num } from './num.ts'
import { outlineOf, platesOf } from './pieces.ts'
import { flatLine, flatLoop, ontoPaper, toMm } from './plane.ts'
import { makePalette } from './stock.ts'

/** No outline is smaller than this, in mm, however small its piece is beside the others. */
const leastSide = 4

/**
 * A tiny drawing of a piece's outline for a table, without text. All pieces of a card are drawn to one scale, at which
 * the largest is `maxMm` long, so that they can be told apart by size.
 *
 * @returns the SVG, hidden from screen readers (the table says the size), or nothing for an unknown piece.
 */
export function pieceOutline(card: Card, name: string, maxMm: number): Element | undefined {
  const { structure } = card
  const piece = structure.pieces.find((p) => p.name === name)
  if (!piece) return undefined
  const long = ({ size }: typeof piece) => Math.max(toMm(size.width), toMm(size.height))
  const common = (maxMm - weights.edge) / Math.max(...structure.pieces.map(long))
  const scale = Math.max(common, Math.min(leastSide, maxMm - weights.edge) / long(piece))
  const place = ontoPaper(toMm(piece.size.height), scale)
  const paint = makePalette(structure).paint(piece.stock)
  const stroke = { width: weights.layer }
  const holes = platesOf(structure, piece).flatMap((plate) => plate.holes.map(flatLoop))
  const loops = [...outlineOf(structure, piece), ...holes].map((loop) => loop.map(place))
  const marks: Mark[] = [
    area(loops, { class: 'outline', fill: paint.tint, stroke }),
    ...hingesOf(structure, name).map(({ fold, line: crease }) => {
      const [a, b] = flatLine(crease)
      const { dash, ...rest } = creaseStroke(fold)
      // At this size a dash pattern would be a few dots: a third of it still tells valley from mountain.
      return line(place(a), place(b), { ...rest, width: 0.2, dash: (dash ?? []).map((d) => d / 3) })
    }),
  ]
  const box = boxOf(marks.map((m) => m.box))
  const [width, height] = [box.right - box.left, box.bottom - box.top]
  return s(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      class: 'outline',
      width: `${num(width)}mm`,
      height: `${num(height)}mm`,
      viewBox: [box.left, box.top, width, height].map((n) => num(n)).join(' '),
      'aria-hidden': 'true',
      focusable: 'false',
      fill: 'none',
    },
    marks.map((m) => m.node()),
  )
}
