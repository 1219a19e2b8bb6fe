import type { Card } from '../../card/card.ts'
import type { Piece } from '../../card/structure.ts'
import type { Wording } from '../../wording/wording.ts'
import { across, edges } from '../edge.ts'
import { type FigureOptions, fitted, leastAndMost, usualRoom } from '../fit.ts'
import type { Sheet } from '../frame.ts'
import { point, usualText, weights } from '../ink.ts'
import { crease, cutStroke, legend } from '../legend.ts'
import { area, line, type Mark } from '../mark.ts'
import { painted } from '../painted.ts'
import { type Picked, picked } from '../picked.ts'
import { lineOnPaper, ontoPaper, toMm } from '../plane.ts'
import { running } from '../running.ts'
import { makePalette, type Paint } from '../stock.ts'
import { flatGlints, flatLetters, flatNames, upright } from './names.ts'
import { type FlatParts, flatParts } from './parts.ts'
import { measuredParts } from './picked.ts'
import { stopsAlong } from './stops.ts'
import { flatLegend, flatWords } from './words.ts'

/**
 * A piece laid flat, inside face up: where to cut and where to score, measured from its left or lower edge.
 *
 * Numbers that are not picked are left out and not only made plain: whoever holds the ruler reads what stands at it. Their
 * lines stay, so that the piece looks like the one on the table, and the legend says that they are not meant now.
 */
export function drawFlat(card: Card, piece: Piece, wording: Wording, options: FigureOptions): Sheet {
  const room = { ...usualRoom, ...options }
  const size = (options.text ?? usualText) * point
  const parts = flatParts(card, piece)
  const palette = makePalette(card.structure)
  const paint = palette(piece.stock)
  const has = picked(options.labels)
  const entries = options.legend === false ? [] : flatLegend(parts, wording, has)
  const draw = (scale: number): Mark[] => {
    const marks = flatMarks(parts, paint, scale, size, wording, has)
    return [...marks, ...legend(marks, entries, size, room.maxWidth - 1.5)]
  }
  const long = Math.max(toMm(piece.size.width), toMm(piece.size.height))
  const { least, most } = leastAndMost(long, size)
  return {
    marks: fitted(draw, room, { least, most }),
    title: wording.say('figures.piece-flat', { piece: wording.name(piece.name) }),
    alternative: flatWords(parts, wording, has),
    ...(options.key !== undefined && { key: options.key }),
  }
}

/** A flat piece at a scale, with those of its measures and names that are picked, its upper left corner at (0, 0). */
export function flatMarks(
  parts: FlatParts,
  paint: Paint,
  scale: number,
  size: number,
  wording: Wording,
  has: Picked,
): Mark[] {
  const measured = measuredParts(parts, has)
  return [
    ...shapeMarks(parts, paint, scale, size, wording),
    ...measures(measured, scale, size, wording, has),
    ...(has('names') ? flatNames(measured, paint, scale, size, wording) : []),
  ]
}

/** The sheet itself, its creases and its cuts, with the letters that go on it. */
function shapeMarks(parts: FlatParts, paint: Paint, scale: number, size: number, wording: Wording): Mark[] {
  const place = ontoPaper(toMm(parts.piece.size.height), scale)
  const outline = parts.outline.map((loop) => loop.map(place))
  const holes = parts.holes.map((loop) => loop.map(place))
  const stroke = { width: weights.edge }
  return [
    ...painted([...outline, ...holes], paint, { class: 'stock' }),
    ...parts.creases.map((c) => crease(c.fold, lineOnPaper(c.line, place))),
    ...parts.slits.map(([a, b]) => line(place(a), place(b), cutStroke('cut slit'))),
    ...holes.map((loop) => area([loop], { class: 'cut window', stroke })),
    ...outline.map((loop) => area([loop], { class: 'cut outline', stroke })),
    ...flatGlints(parts, paint, scale),
    ...flatLetters(parts, scale),
    ...upright(parts, paint, scale, size, wording),
  ]
}

function measures(parts: FlatParts, scale: number, size: number, wording: Wording, has: Picked): Mark[] {
  const { piece } = parts
  const [width, height] = [toMm(piece.size.width) * scale, toMm(piece.size.height) * scale]
  const whole = (to: number, length: typeof piece.size.width) => ({
    from: 0,
    to,
    text: wording.length(length),
    size,
  })
  return [
    ...running(edges.bottom(height), stopsAlong(parts, 'width', scale, wording), size),
    ...running(edges.left(height), stopsAlong(parts, 'height', scale, wording), size),
    ...(has('size')
      ? [
          ...across(edges.top(), whole(width, piece.size.width)),
          ...across(edges.right(width, height), whole(height, piece.size.height)),
        ]
      : []),
  ]
}
