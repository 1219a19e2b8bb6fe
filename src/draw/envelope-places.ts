import type { Size } from '../length/length.ts'
import { boxOf } from './box.ts'
import { nameShare } from './ink.ts'
import { wrap } from './label.ts'
import type { Mark } from './mark.ts'
import type { Spot } from './num.ts'
import { toMm } from './plane.ts'

/** Small drawings of how an envelope is folded are as large as leaves each of them this share of the sheet. */
export const share = 0.5
const gap = 4
const betweenRows = 2.5
/** Words need this much, in text sizes, however narrow the drawing above them is. */
const wordsWidth = 8
const lineHeight = 1.25

/** How large all is drawn, and the room there is. */
export interface StageRoom {
  readonly scale: number
  /** Of the text, in mm. */
  readonly size: number
  /** A row beside the sheet; two by two beside it; two beside it, one above the other, and two below. */
  readonly grid: 'row' | 'beside' | 'round'
  /** Room for all of it, in mm. */
  readonly wide: number
}

/** Where a small drawing has its lower left corner, and the lines of words that stand under it. */
interface StagePlace {
  readonly at: Spot
  readonly lines: readonly string[]
}

/** Where the small drawings stand, given what is said below each of them and what is drawn of the sheet. */
export const stagePlaces = (
  said: readonly string[],
  flat: readonly Mark[],
  sheet: Size,
  room: StageRoom,
): StagePlace[] => (room.grid === 'round' ? roundTheCorner : inRows)(said, flat, sheet, room)

/** Side by side at the level of the sheet's lower edge, or two by two: all with the same room for words. */
function inRows(
  said: readonly string[],
  flat: readonly Mark[],
  sheet: Size,
  { scale, size, grid, wide }: StageRoom,
): StagePlace[] {
  const { left, right } = boxOf(flat.map(({ box }) => box))
  const columns = grid === 'row' ? said.length : 2
  const width = Math.max(
    toMm(sheet.width) * scale * share,
    wordsWidth * size,
    grid === 'beside' ? (left + wide - right - gap) / columns - gap : 0,
  )
  const lines = said.map((text) => wrap(text, width + gap - 2, size * nameShare))
  const words = Math.max(3, ...lines.map(({ length }) => length)) * size * lineHeight
  const bottom = toMm(sheet.height) * scale
  const tall = bottom * share + words + gap
  return lines.map((lines, i) => {
    const column = right + gap + (i % columns) * (width + gap)
    const low = (grid === 'row' ? bottom : (1 + Math.floor(i / columns)) * tall) - words
    return { at: [column, low], lines }
  })
}

/** The first two beside the sheet, the others below it in the same two columns, each with the lines that it needs. */
function roundTheCorner(
  said: readonly string[],
  flat: readonly Mark[],
  sheet: Size,
  { scale, size, wide }: StageRoom,
): StagePlace[] {
  const { left: first, right, bottom } = boxOf(flat.map(({ box }) => box))
  const column = right + gap
  const width = Math.max(first + wide - column - 1, toMm(sheet.width) * scale * share, wordsWidth * size)
  const tall = toMm(sheet.height) * scale * share
  const lines = said.map((text, i) => wrap(text, i === 2 ? column - first - 2 : width, size * nameShare))
  const below = (i: number): number => (lines[i]?.length ?? 0) * size * lineHeight + betweenRows
  const second = tall + below(0) + tall
  const third = Math.max(second + below(1), bottom + betweenRows) + tall
  const spots: Spot[] = [
    [column, tall],
    [column, second],
    [first, third],
    [column, third],
  ]
  return lines.map((lines, i) => ({ at: spots[i] ?? [0, 0], lines }))
}
