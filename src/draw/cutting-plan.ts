import { listOf } from '../length/finding.ts'
import { formatLength, formatSize } from '../length/format.ts'
import { groupBy } from '../length/group-by.ts'
import type { Length, Size, Unit } from '../length/length.ts'
import { type Box, near } from './box.ts'
import { across, edges } from './edge.ts'
import type { Figure } from './figure.ts'
import { type FigureOptions, fitted, leastAndMost, usualRoom } from './fit.ts'
import { frame } from './frame.ts'
import type { Hatch } from './hatch.ts'
import { colours, nameShare, point, usualText, weights } from './ink.ts'
import { capHeight, label, textWidth, wrap } from './label.ts'
import { type Entry, legend } from './legend.ts'
import { area, line, type Mark } from './mark.ts'
import type { Spot } from './num.ts'
import { painted } from './painted.ts'
import { ontoPaper, toMm } from './plane.ts'
import { tints } from './stock.ts'
import { upMark } from './up.ts'

/** A sheet and how it is cut up: everything from its lower left corner. */
export interface SheetPlan {
  readonly stock: string
  readonly sheet: Size
  readonly placed: readonly (Size & {
    readonly name: string
    readonly x: Length
    readonly y: Length
    /** Its pattern has a top. */
    readonly upright: boolean
  })[]
  /** From edge to edge of what is in hand, in their order; `across: 'width'` is an upright one. */
  readonly cuts: readonly {
    readonly across: 'width' | 'height'
    readonly at: Length
    readonly from: Length
    readonly to: Length
  }[]
}

/** A cutting plan drawn: pieces with their names and sizes, what is left over hatched, the cuts numbered in their order. */
export function drawCuttingPlan(plan: SheetPlan, unit: Unit, options: FigureOptions = {}): Figure {
  const room = { ...usualRoom, ...options }
  const size = (options.text ?? usualText) * point
  const [width, height] = [toMm(plan.sheet.width), toMm(plan.sheet.height)]
  const draw = (scale: number): Mark[] => {
    const place = ontoPaper(height, scale)
    const shape = [
      ...painted([rectangle(place, 0, 0, width, height)], leftOver, { class: 'left-over' }),
      ...plan.placed.map((piece) => area([loopOf(piece, place)], { class: 'stock', fill: tints.sand.tint })),
      area([rectangle(place, 0, 0, width, height)], { class: 'sheet', stroke: { width: weights.edge } }),
    ]
    const { names, keys } = pieceNames(plan, place, size, unit)
    const sides = [
      ...across(edges.top(), {
        from: 0,
        to: width * scale,
        text: formatLength(plan.sheet.width, unit),
        size,
      }),
      ...across(edges.right(width * scale, height * scale), {
        from: 0,
        to: height * scale,
        text: formatLength(plan.sheet.height, unit),
        size,
      }),
    ]
    const all = [...shape, ...names, ...sides, ...cutMarks(plan, [...names, ...sides], place, size)]
    return [...all, ...legend(all, keys, size, room.maxWidth - 1.5)]
  }
  return frame({
    marks: fitted(draw, room, scales(plan, size)),
    title: `A sheet of ${plan.stock}, and how it is cut`,
    alternative: planWords(plan, unit),
    ...(options.key !== undefined && { key: options.key }),
  })
}

/** Even the narrowest piece holds a letter. */
function scales({ sheet, placed }: SheetPlan, size: number): { least: number; most: number } {
  const { least, most } = leastAndMost(Math.max(toMm(sheet.width), toMm(sheet.height)), size)
  const narrowest = Math.min(...placed.flatMap(({ width, height }) => [toMm(width), toMm(height)]))
  return { least: Math.min(most, Math.max(least, (1.3 * size) / narrowest)), most }
}

const strokes: Hatch = {
  tile: 2.4,
  turn: 45,
  colour: '#c9c2b2',
  width: 0.18,
  lines: [{ level: true, at: 1.2 }],
}
const leftOver = { tint: colours.paper, hatch: strokes, film: false } as const

type Place = (p: readonly [number, number]) => Spot

const rectangle = (place: Place, x: number, y: number, w: number, h: number): Spot[] => [
  place([x, y]),
  place([x + w, y]),
  place([x + w, y + h]),
  place([x, y + h]),
]

const loopOf = ({ x, y, width, height }: SheetPlan['placed'][number], place: Place): Spot[] =>
  rectangle(place, toMm(x), toMm(y), toMm(width), toMm(height))

/** Half the height of the box that the number of a cut stands in, in text sizes. */
const half = 0.62

/** The cuts, each with its number on the line, as near to where it begins as no name and no other number is. */
function cutMarks(plan: SheetPlan, names: readonly Mark[], place: Place, size: number): Mark[] {
  const taken = names.map(({ box }) => box)
  const lines = plan.cuts.map((cut) => {
    const at = (along: Length): Spot =>
      place(cut.across === 'width' ? [toMm(cut.at), toMm(along)] : [toMm(along), toMm(cut.at)])
    return [at(cut.from), at(cut.to)] as const
  })
  const numbers = lines.flatMap(([from, to], i) => {
    const box = seats(from, to, wide(i + 1, size), half * size)
    const free = box.find((one) => !taken.some((other) => near(one, other, 0.3))) ?? box[0]
    if (!free) return []
    taken.push(free)
    return numberIn(free, i + 1, size)
  })
  return [
    ...lines.map(([from, to]) => line(from, to, { class: 'cut', width: weights.edge, cap: 'round' })),
    ...numbers,
  ]
}

const wide = (number: number, size: number): number =>
  Math.max(half * size, textWidth(String(number), size * nameShare) / 2 + 0.5)

/** Boxes along a line from its beginning to its end, then beyond it: first where the cut begins, then behind it. */
function seats(from: Spot, to: Spot, w: number, h: number): Box[] {
  const long = Math.hypot(to[0] - from[0], to[1] - from[1])
  const [dx, dy] = [(to[0] - from[0]) / long, (to[1] - from[1]) / long]
  const step = Math.abs(dx) * w + Math.abs(dy) * h
  const along: number[] = []
  for (let at = step + 0.6; at <= long - step - 0.6; at += step / 2) along.push(at)
  return [...along, long / 2, -step - 0.6, long + step + 0.6].map((at) => {
    const [x, y] = [from[0] + dx * at, from[1] + dy * at]
    return { left: x - w, right: x + w, top: y - h, bottom: y + h }
  })
}

function numberIn({ left, right, top, bottom }: Box, number: number, size: number): Mark[] {
  const own = size * nameShare
  const ground: Spot[] = [
    [left, top],
    [right, top],
    [right, bottom],
    [left, bottom],
  ]
  return [
    area([ground], {
      class: 'ground',
      fill: colours.paper,
      stroke: { width: weights.dimension, colour: colours.rust },
    }),
    label(String(number), [(left + right) / 2, (top + bottom + capHeight * own) / 2], {
      class: 'cut-number',
      size: own,
      colour: colours.rust,
      bold: true,
      anchor: 'middle',
    }),
  ]
}

/** Names with sizes in the pieces; where there is no room, a letter that is explained below. */
function pieceNames(
  plan: SheetPlan,
  place: Place,
  size: number,
  unit: Unit,
): { names: Mark[]; keys: Entry[] } {
  const keyed = new Map<string, string>()
  const names = plan.placed.flatMap((piece): Mark[] => {
    const [[left, bottom] = [0, 0], , [right, top] = [0, 0]] = loopOf(piece, place)
    const inset = half * size + 0.5
    const room: Box = { left: left + inset, right: right - inset, top: top + inset, bottom: bottom - inset }
    const said = [piece.name, formatSize(piece, unit)]
    const lines = linesIn(room, said, size, piece.upright)
    if (lines) return centred(lines, room, size, piece.upright)
    const what = said.join(', ')
    const key = keyed.get(what) ?? letter(keyed.size)
    keyed.set(what, key)
    return centred([key], { left, right, top, bottom }, size, false)
  })
  return { names, keys: [...keyed].map(([what, key]) => ({ text: `${key}: ${what}` })) }
}

/** The lines if they fit; a pattern with a top needs room for its mark. */
function linesIn(room: Box, said: readonly string[], size: number, upright: boolean): string[] | undefined {
  const [width, height] = [room.right - room.left, room.bottom - room.top]
  const lines = said.flatMap((text) => wrap(text, width, size))
  const high = lines.length * size * 1.25 + (upright ? upHeight(size) : 0)
  const fits = high <= height && lines.every((text) => textWidth(text, size) <= width)
  return fits ? lines : undefined
}

const upHeight = (size: number): number => Math.max(4, size * 1.3) + 2

function centred(lines: readonly string[], box: Box, size: number, upright: boolean): Mark[] {
  const [x, y] = [(box.left + box.right) / 2, (box.top + box.bottom) / 2]
  const step = size * 1.25
  const extra = upright ? upHeight(size) / 2 : 0
  const first = y - ((lines.length - 1) * step) / 2 + (capHeight * size) / 2 - extra
  return [
    ...lines.map((text, i) =>
      label(text, [x, first + i * step], {
        class: 'name',
        size,
        anchor: 'middle',
        ...(i === 0 && { bold: true }),
      }),
    ),
    ...(upright
      ? upMark([x - 2, first + (lines.length - 1) * step + upHeight(size)], size, {
          tint: tints.sand.tint,
          film: false,
        })
      : []),
  ]
}

/** A, B … Z, A2, B2 … */
const letter = (n: number): string =>
  String.fromCharCode(65 + (n % 26)) + (n >= 26 ? String(Math.floor(n / 26) + 1) : '')

function planWords(plan: SheetPlan, unit: Unit): string {
  const pieces = groupBy(plan.placed, (piece) => `${piece.name}, ${formatSize(piece, unit)}`)
  const cuts = plan.cuts.map(
    ({ across: way, at }, i) =>
      `${i + 1} at ${formatLength(at, unit)} from the ${way === 'width' ? 'left' : 'lower'} edge`,
  )
  return `A sheet of ${plan.stock}, ${formatSize(plan.sheet, unit)}, with ${listOf([...pieces].map(([what, list]) => `${list.length} × ${what}`))}. Cuts in their order: ${listOf(cuts)}.`
}
