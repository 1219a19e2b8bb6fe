import { covers } from '../fold/assembly.ts'
import type { Wording } from '../wording/wording.ts'
import { type Box, boxAround, lineNear } from './box.ts'
import { colours } from './ink.ts'
import { label } from './label.ts'
import { area, arrow, line, type Mark } from './mark.ts'
import type { Spot } from './num.ts'
import type { Paint } from './stock.ts'

/** The small mark of a pattern with a top: an arrow and the word, its foot at `at`. */
export const upMark = (at: Spot, size: number, paint: Paint, wording: Wording): Mark[] =>
  marksAt(at, size, paint, upWord(wording))

/**
 * The mark of a pattern with a top on a sheet of any outline: in the lower left corner if it has room there, or else
 * wherever on the sheet it is clear of edges, windows and other lines. Where the sheet is a rim too narrow for the word,
 * the arrow stands alone.
 *
 * @param loops the outline and the windows.
 * @returns nothing where there is no room at all.
 */
export function upOn(
  loops: readonly (readonly Spot[])[],
  lines: readonly (readonly [Spot, Spot])[],
  size: number,
  paint: Paint,
  wording: Wording,
): Mark[] {
  const [outline = [], ...windows] = loops
  const sides = [...loops.flatMap(edgesOf), ...lines]
  const isClear = (box: Box): boolean =>
    covers(loops, box.left, box.top) && !sides.some(([a, b]) => lineNear(box, a, b, clear))
  for (const word of [upWord(wording), '']) {
    const { left, right, top, bottom } = groundAt([0, 0], size, word)
    // Its corner towards the corner of the sheet, and then in the middle of each strip that a window leaves.
    for (const room of [boxAround(outline), ...stripsRound(boxAround(outline), windows)])
      for (const [x, y] of spotsIn(room, { left, right, top, bottom }))
        if (isClear(groundAt([x, y], size, word))) return marksAt([x, y], size, paint, word)
  }
  return []
}

/** Clear room round the mark, in mm. */
const clear = 0.4
/** From the left and the lower edge of a sheet to the foot of the mark, in mm. */
const inset = [2.2, 1.8] as const

const heightOf = (size: number): number => Math.max(4, size * 1.3)

const upWord = ({ say }: Wording): string => say('figures.up')

const labelAt = (word: string, [x, y]: Spot, size: number): Mark =>
  label(word, [x + 1.1, y - size * 0.35], { class: 'name', size, colour: colours.slate })

/** What the mark covers. @param word beside it; empty for the arrow alone. */
const groundAt = ([x, y]: Spot, size: number, word: string): Box => ({
  left: x - 0.9,
  top: y - heightOf(size) - 0.5,
  right: word === '' ? x + 0.9 : labelAt(word, [x, y], size).box.right + 0.6,
  bottom: y + 0.6,
})

function marksAt([x, y]: Spot, size: number, paint: Paint, word: string): Mark[] {
  const { left, top, right, bottom } = groundAt([x, y], size, word)
  const ground: Spot[] = [
    [left, top],
    [right, top],
    [right, bottom],
    [left, bottom],
  ]
  const high = heightOf(size)
  return [
    area([ground], { class: 'ground', fill: paint.tint }),
    line([x, y], [x, y - high + 1.5], { class: 'up', width: 0.35, colour: colours.slate }),
    arrow([x, y - high], [0, -1], colours.slate),
    ...(word === '' ? [] : [labelAt(word, [x, y], size)]),
  ]
}

const edgesOf = (loop: readonly Spot[]): (readonly [Spot, Spot])[] =>
  loop.map((p, i) => [p, loop[(i + 1) % loop.length] ?? p])

/** Feet of a mark in a room: in its corners, the lower left one first, and in its middle. */
function spotsIn(room: Box, { left, right, top, bottom }: Box): Spot[] {
  const [near, far] = [room.left + inset[0], room.right - right - clear - 0.5]
  const [low, high] = [room.bottom - inset[1], room.top - top + clear + 0.5]
  const middle: Spot = [
    (room.left + room.right - left - right) / 2,
    (room.top + room.bottom - top - bottom) / 2,
  ]
  return [[near, low], [far, low], [near, high], [far, high], middle]
}

/** What is left of a sheet below, beside and above its windows. */
function stripsRound(sheet: Box, windows: readonly (readonly Spot[])[]): Box[] {
  if (windows.length === 0) return []
  const hole = boxAround(windows.flat())
  return [
    { ...sheet, top: hole.bottom },
    { ...sheet, right: hole.left },
    { ...sheet, left: hole.right },
    { ...sheet, bottom: hole.top },
  ]
}
