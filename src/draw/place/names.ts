import type { Wording } from '../../wording/wording.ts'
import { type Box, boxAround, near } from '../box.ts'
import { colours, nameShare } from '../ink.ts'
import { capHeight, label } from '../label.ts'
import type { Mark } from '../mark.ts'
import { nameIn } from '../names.ts'
import type { Spot } from '../num.ts'
import type { Picked } from '../picked.ts'
import type { Paint } from '../stock.ts'
import { upOn } from '../up.ts'
import type { Measured } from './borders.ts'
import type { OnPaper } from './paper.ts'
import type { PlaceView } from './view.ts'

/**
 * The panels' names below the shape, or beside it where creases run across; on the other side of what is measured. Of
 * panels one behind the other, seen from there, the nearest is named.
 */
export function panelNames(
  view: PlaceView,
  { region, panels }: OnPaper,
  { below, onLeft }: Measured,
  size: number,
  wording: Wording,
): Mark[] {
  const small = size * nameShare
  const first = view.creases[0]?.ends
  const beside = first !== undefined && Math.abs(first[0][1] - first[1][1]) < 1e-6
  const wayToName = (box: Box): Box => {
    if (beside)
      return onLeft
        ? { ...box, left: box.right, right: region.right }
        : { ...box, left: region.left, right: box.left }
    return below
      ? { ...box, top: region.top, bottom: box.top }
      : { ...box, top: box.bottom, bottom: region.bottom }
  }
  const marks: Mark[] = []
  const boxes = panels.map((loop) => boxAround(loop))
  for (const [i, { name }] of view.panels.entries()) {
    const box = boxes[i]
    if (!box || boxes.some((other) => near(other, wayToName(box), -0.01))) continue
    for (let row = 0; row < view.panels.length; row++) {
      const away = 1.4 + row * small * 1.2
      const at: Spot = beside
        ? [
            onLeft ? region.right + away + small * capHeight : region.left - away - 0.22 * small,
            (box.top + box.bottom) / 2,
          ]
        : [
            (box.left + box.right) / 2,
            below ? region.top - away - 0.22 * small : region.bottom + away + small * capHeight,
          ]
      const style = {
        class: 'name',
        size: small,
        colour: colours.slate,
        anchor: 'middle',
        turned: beside,
      } as const
      const mark = label(wording.name(name), at, style)
      if (marks.some((m) => near(m.box, mark.box, 1.2))) continue
      marks.push(mark)
      break
    }
  }
  return marks
}

/**
 * The piece's own name and size on it, and its direction, where they fit. What it is made of comes with the
 * glints of a film.
 */
export function layerNames(
  view: PlaceView,
  placed: OnPaper,
  { paint, shine }: { readonly paint: Paint; readonly shine: readonly (readonly [Spot, Spot])[] },
  size: number,
  wording: Wording,
  has: Picked,
): Mark[] {
  const small = size * nameShare
  // What is behind a film shows through it.
  const lines = paint.film
    ? [...shine, ...placed.edges, ...placed.hints, ...placed.slits, ...placed.creases.map((c) => c.ends)]
    : []
  const own = { ...(paint.hatch && { ground: paint.tint }), colour: colours.ink }
  return placed.laid.flatMap(([outline = [], ...holes]) => {
    const box = boxAround(outline)
    const up =
      view.piece.stock.direction === 'upright' ? upOn([outline, ...holes], lines, small, paint, wording) : []
    const taken = {
      boxes: [...holes.map((hole) => boxAround(hole)), ...up.map((m) => m.box)],
      lines,
    }
    const name = has('names') ? [wording.name(view.piece.name)] : []
    const both = has('size') ? [...name, wording.size(view.piece.size)] : name
    const put = (words: readonly string[]) => (words.length > 0 ? nameIn(box, words, small, taken, own) : [])
    const whole = put(both)
    const named = whole.length > 0 ? whole : put(name)
    return [...up, ...named]
  })
}
