import type { Card } from '../card/card.ts'
import type { Piece } from '../card/structure.ts'
import { formatLength } from '../length/format.ts'
import type { Unit } from '../length/length.ts'
import { boxAround } from './box.ts'
import { across, edges } from './edge.ts'
import { glints } from './film.ts'
import { type FigureOptions, fitted, leastAndMost, usualRoom } from './fit.ts'
import { type FlatParts, flatParts } from './flat-parts.ts'
import { stopsAlong } from './flat-stops.ts'
import { flatLegend, flatWords } from './flat-words.ts'
import type { Sheet } from './frame.ts'
import { nameShare, point, usualText, weights } from './ink.ts'
import { creaseStroke, cutStroke, legend } from './legend.ts'
import { letterMark, setLetters } from './letters.ts'
import { area, line, type Mark } from './mark.ts'
import { heights, nameIn } from './names.ts'
import type { Spot } from './num.ts'
import { flatLine, flatLoop, ontoPaper, toMm } from './plane.ts'
import { running } from './running.ts'
import { makePalette, type Paint } from './stock.ts'
import { upMark } from './up.ts'

/** A piece laid flat, inside face up: where to cut and where to score, measured from its left or lower edge. */
export function drawFlat(card: Card, piece: Piece, unit: Unit, options: FigureOptions): Sheet {
  const room = { ...usualRoom, ...options }
  const size = (options.text ?? usualText) * point
  const parts = flatParts(card, piece)
  const palette = makePalette(card.structure)
  const paint = palette.paint(piece.stock)
  const entries = flatLegend(parts, unit)
  const draw = (scale: number): Mark[] => {
    const shape = [...shapeMarks(parts, paint, scale, size), ...measures(parts, scale, size, unit)]
    const named = namesIn(parts, paint, scale, size, unit)
    return [...shape, ...named, ...legend(shape, entries, size, room.maxWidth - 1.5)]
  }
  const long = Math.max(toMm(piece.size.width), toMm(piece.size.height))
  return {
    marks: fitted(draw, room, leastAndMost(long, size)),
    defs: palette.defs(),
    title: `${piece.name}, laid flat`,
    alternative: flatWords(parts, unit),
    ...(options.key !== undefined && { key: options.key }),
  }
}

const paper = ({ piece }: FlatParts, scale: number) => ontoPaper(toMm(piece.size.height), scale)

const ends = (segment: Parameters<typeof flatLine>[0], place: ReturnType<typeof ontoPaper>): [Spot, Spot] => {
  const [a, b] = flatLine(segment)
  return [place(a), place(b)]
}

/** The sheet itself, its creases and its cuts, with the letters that go on it. */
function shapeMarks(parts: FlatParts, paint: Paint, scale: number, size: number): Mark[] {
  const place = paper(parts, scale)
  const outline = parts.outline.map((loop) => loop.map(place))
  const holes = parts.holes.map((loop) => loop.map(place))
  const stroke = { width: weights.edge }
  const { fill, opacity } = paint
  return [
    area([...outline, ...holes], { class: 'stock', fill, ...(opacity !== undefined && { opacity }) }),
    ...parts.creases.map((c) => line(...ends(c.line, place), creaseStroke(c.fold))),
    ...parts.slits.map(([a, b]) => line(place(a), place(b), cutStroke('cut slit'))),
    ...holes.map((loop) => area([loop], { class: 'cut window', stroke })),
    ...outline.map((loop) => area([loop], { class: 'cut outline', stroke })),
    ...(paint.film ? glints(toMm(parts.piece.size.width), toMm(parts.piece.size.height), scale, place) : []),
    ...letters(parts, scale),
    ...upright(parts, paint, scale, size),
  ]
}

function measures({ piece, ...rest }: FlatParts, scale: number, size: number, unit: Unit): Mark[] {
  const parts = { piece, ...rest }
  const [width, height] = [toMm(piece.size.width) * scale, toMm(piece.size.height) * scale]
  const whole = (to: number, length: typeof piece.size.width) => ({
    from: 0,
    to,
    text: formatLength(length, unit),
    size,
  })
  return [
    ...running(edges.bottom(height), stopsAlong(parts, 'width', scale, unit), size),
    ...running(edges.left(height), stopsAlong(parts, 'height', scale, unit), size),
    ...across(edges.top(), whole(width, piece.size.width)),
    ...across(edges.right(width, height), whole(height, piece.size.height)),
  ]
}

function letters(parts: FlatParts, scale: number): Mark[] {
  const place = paper(parts, scale)
  return parts.lettering.flatMap((lettering) => {
    const set = setLetters(lettering, toMm(parts.piece.size.height))
    return set.letters.map(({ text, base }) => letterMark(text, place(base), set.size * scale))
  })
}

/** The direction mark in the lower left corner, if the pattern has a top and the sheet room for the mark. */
function upright({ piece }: FlatParts, paint: Paint, scale: number, size: number): Mark[] {
  if (piece.stock.direction !== 'upright') return []
  const [width, height] = [toMm(piece.size.width) * scale, toMm(piece.size.height) * scale]
  const marks = upMark([2.2, height - 1.8], size * nameShare, paint)
  return marks.every((m) => m.box.right < width - 1 && m.box.top > 1) ? marks : []
}

/** The panels' names, or the piece's own, where they are clear of everything else. */
function namesIn(parts: FlatParts, paint: Paint, scale: number, size: number, unit: Unit): Mark[] {
  const place = paper(parts, scale)
  const height = toMm(parts.piece.size.height) * scale
  const drawn = [...letters(parts, scale), ...upright(parts, paint, scale, size)]
  const taken = {
    boxes: [...parts.holes.map((loop) => boxAround(loop.map(place))), ...drawn.map((m) => m.box)],
    lines: [
      ...parts.creases.map((c) => ends(c.line, place)),
      ...parts.slits.map(([a, b]): [Spot, Spot] => [place(a), place(b)]),
      ...stopsAlong(parts, 'width', scale, unit).map((s): [Spot, Spot] => [
        [s.at, height - s.inside],
        [s.at, height],
      ]),
      ...stopsAlong(parts, 'height', scale, unit).map((s): [Spot, Spot] => [
        [0, height - s.at],
        [s.inside, height - s.at],
      ]),
    ],
  }
  const ground = paint.patterned ? { ground: paint.tint } : {}
  const rooms =
    parts.plates.length > 1 ? parts.plates.map((p) => ({ name: p.name, loop: flatLoop(p.outline) })) : []
  if (rooms.length === 0) rooms.push({ name: parts.piece.name, loop: [...(parts.outline[0] ?? [])] })
  const named = (shares: readonly number[]) =>
    rooms.map(({ name, loop }) =>
      nameIn(boxAround(loop.map(place)), [name], size * nameShare, taken, ground, shares),
    )
  // Side by side on one level, as many as can be; the others where they find room.
  const levels = heights.map((share) => named([share]))
  const count = (level: Mark[][]) => level.filter((marks) => marks.length > 0).length
  const best = levels.reduce((a, b) => (count(b) > count(a) ? b : a))
  const rest = named(heights)
  return best.flatMap((marks, i) => (marks.length > 0 ? marks : (rest[i] ?? [])))
}
