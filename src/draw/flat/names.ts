import type { Wording } from '../../wording/wording.ts'
import { boxAround } from '../box.ts'
import { lineInside } from '../clip.ts'
import { areaOf, filmLines } from '../face/film.ts'
import { glintStroke } from '../film.ts'
import { nameShare } from '../ink.ts'
import { letterMark, setLetters } from '../letters.ts'
import { line, type Mark } from '../mark.ts'
import { heights, nameIn } from '../names.ts'
import type { Spot } from '../num.ts'
import { flatLoop, lineOnPaper, ontoPaper, toMm } from '../plane.ts'
import { roomIn } from '../room.ts'
import type { Paint } from '../stock.ts'
import { upOn } from '../up.ts'
import type { FlatParts } from './parts.ts'
import { stopsAlong } from './stops.ts'

/** The letters that go on the piece, at their marks. */
export function flatLetters(parts: FlatParts, scale: number): Mark[] {
  const place = ontoPaper(toMm(parts.piece.size.height), scale)
  return parts.lettering.flatMap((lettering) => {
    const set = setLetters(lettering, toMm(parts.piece.size.height))
    return set.letters.map(({ text, base }) => letterMark(text, place(base), set.size * scale))
  })
}

/** The direction mark, if the pattern has a top and the sheet room for the mark. */
export function upright(
  parts: FlatParts,
  paint: Paint,
  scale: number,
  size: number,
  wording: Wording,
): Mark[] {
  if (parts.piece.stock.direction !== 'upright') return []
  const place = ontoPaper(toMm(parts.piece.size.height), scale)
  const loops = [...parts.outline, ...parts.holes].map((loop) => loop.map(place))
  const lines = [
    ...parts.creases.map((c) => lineOnPaper(c.line, place)),
    ...parts.slits.map(([a, b]): [Spot, Spot] => [place(a), place(b)]),
  ]
  return upOn(loops, lines, size * nameShare, paint, wording)
}

/** What tells film from paper, on its largest panel. */
export function flatGlints(parts: FlatParts, paint: Paint, scale: number): Mark[] {
  return glintsAt(parts, paint, scale).map(([a, b]) => line(a, b, glintStroke))
}

function glintsAt(
  { piece, plates, outline, holes }: FlatParts,
  paint: Paint,
  scale: number,
): (readonly [Spot, Spot])[] {
  if (!paint.film) return []
  const place = ontoPaper(toMm(piece.size.height), scale)
  const loops = [...outline, ...holes].map((loop) => loop.map(place))
  const panels = plates.length > 1 ? plates.map((plate) => flatLoop(plate.outline)) : outline
  const largest = panels.reduce((a, b) => (areaOf(b) > areaOf(a) + 1e-6 ? b : a))
  return filmLines(largest, scale).flatMap(([a, b]) => lineInside([place(a), place(b)], loops))
}

/** The panels' names, or the piece's own, where they are clear of everything else. */
export function flatNames(
  parts: FlatParts,
  paint: Paint,
  scale: number,
  size: number,
  wording: Wording,
): Mark[] {
  const place = ontoPaper(toMm(parts.piece.size.height), scale)
  const height = toMm(parts.piece.size.height) * scale
  const drawn = [...flatLetters(parts, scale), ...upright(parts, paint, scale, size, wording)]
  const taken = {
    boxes: [...parts.holes.map((loop) => boxAround(loop.map(place))), ...drawn.map((m) => m.box)],
    lines: [
      ...glintsAt(parts, paint, scale),
      ...parts.creases.map((c) => lineOnPaper(c.line, place)),
      ...parts.slits.map(([a, b]): [Spot, Spot] => [place(a), place(b)]),
      ...stopsAlong(parts, 'width', scale, wording).map((s): [Spot, Spot] => [
        [s.at, height - s.inside],
        [s.at, height],
      ]),
      ...stopsAlong(parts, 'height', scale, wording).map((s): [Spot, Spot] => [
        [0, height - s.at],
        [s.inside, height - s.at],
      ]),
    ],
  }
  const ground = paint.hatch ? { ground: paint.tint } : {}
  const rooms =
    parts.plates.length > 1 ? parts.plates.map((p) => ({ name: p.name, loop: flatLoop(p.outline) })) : []
  if (rooms.length === 0) rooms.push({ name: parts.piece.name, loop: [...(parts.outline[0] ?? [])] })
  const named = ({ name, loop }: (typeof rooms)[number], shares: readonly number[]) =>
    nameIn(roomIn(loop.map(place)), [wording.name(name)], size * nameShare, taken, ground, shares)
  // Side by side on one level, as many as can be; the others where they find room.
  const levels = heights.map((share) => rooms.map((room) => named(room, [share])))
  const count = (level: Mark[][]) => level.filter((marks) => marks.length > 0).length
  const best = levels.reduce((a, b) => (count(b) > count(a) ? b : a))
  return rooms.flatMap((room, i) => (best[i]?.length ? best[i] : named(room, heights)))
}
