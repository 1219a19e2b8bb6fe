import { textWidth } from '../label.ts'
import { beside, type Drop, dropsFor } from './leaders.ts'
import type { Named } from './names.ts'

/** A name with its place: in a row above or below the drawing, counted away from it. */
export interface Seated {
  readonly name: Named
  readonly above: boolean
  readonly row: number
  readonly left: number
  readonly width: number
  readonly drops: readonly Drop[]
}

/** The room that names have. */
export interface Room {
  /** A name may reach from here to there along the paper, above the drawing and below it. */
  readonly above: readonly [from: number, to: number]
  readonly below: readonly [from: number, to: number]
  readonly size: number
  /** How many layers a line crosses that comes from above, or from below, to this height. */
  readonly crossed: (x: number, z: number, above: boolean) => number
}

/** Between names in a row, and between a name and the line of another. */
const [apart, clear] = [1.6, 0.9]
const mostRows = 3

/** Where a text may begin over its line, in shares of its width, the best first. */
const shares = {
  centred: [0.5, 0.25, 0.75, 0.06, 0.94],
  right: [0.06, 0.25, 0.5, 0.75, 0.94],
  left: [0.94, 0.75, 0.5, 0.25, 0.06],
} as const
export type Way = keyof typeof shares

interface Choice {
  readonly drops: readonly Drop[]
  readonly above: boolean
  /** Of the layers that the lines cross. */
  readonly cost: number
}

/** A name that has no place yet. */
export interface Waiting {
  readonly name: Named
  readonly width: number
  readonly choices: readonly Choice[]
  /** How long the shortest stretch is that it may point at. */
  readonly long: number
  /** From where to where they all reach. */
  readonly start: number
  readonly end: number
}

export interface Found {
  readonly waiting: Waiting
  readonly seat: Seated
  readonly cost: number
}

/** Lines to a name from above or from below, the ones that cross fewest layers first. */
function choicesOf(all: readonly (readonly Drop[])[], room: Room): Choice[] {
  const choices = all.flatMap((drops) =>
    [true, false].map((above) => {
      const crossed = drops.reduce(
        (sum, { x, dots }) => sum + room.crossed(x, farthest(dots, above), above),
        0,
      )
      return { drops, above, cost: crossed * 1.5 + (above ? 0 : 0.4) }
    }),
  )
  return choices.sort((a, b) => a.cost - b.cost)
}

/** The best place for a name beside those that have theirs; nothing if there is none. */
export function seatFor(
  waiting: Waiting,
  room: Room,
  seated: readonly Seated[],
  way: Way,
): Found | undefined {
  const { name, choices, width } = waiting
  let best: Found | undefined
  for (const { drops, above, cost: least } of choices) {
    if (best && least >= best.cost) break
    const [first, last] = [drops[0]?.x ?? 0, drops.at(-1)?.x ?? 0]
    const [from, to] = above ? room.above : room.below
    const base = least + (way === 'centred' ? 0 : (way === 'right' ? to - last : first - from) * 0.02)
    if ((best && base >= best.cost) || !isClear(drops, above, seated)) continue
    const under = seated.filter((s) => s.above === above && isUnder(drops, s))
    const rows = Math.min(mostRows, ...under.map(({ row }) => row))
    for (const [i, left] of leftEnds(first, last, width, way).entries()) {
      if (left < from || left + width > to) continue
      for (let row = 0; row < rows; row++) {
        const cost = base + row * 3 + i * 0.4
        if (best && cost >= best.cost) break
        const seat = { name, above, row, left, width, drops }
        if (seated.every((other) => fits(seat, other))) best = { waiting, seat, cost }
      }
    }
  }
  return best
}

const farthest = (dots: readonly number[], above: boolean): number =>
  above ? Math.min(...dots) : Math.max(...dots)

function leftEnds(first: number, last: number, width: number, way: Way): number[] {
  const middle = (first + last) / 2
  if (last - first > 0.01) return [middle - width / 2]
  return shares[way].map((share) => middle - share * width)
}

/** Whether lines keep clear of all other lines at the heights that both run through. */
const isClear = (drops: readonly Drop[], above: boolean, seated: readonly Seated[]): boolean =>
  !seated.some((other) =>
    other.drops.some((q) =>
      drops.some((p) => Math.abs(p.x - q.x) < beside && meet(above, p, other.above, q)),
    ),
  )

/** Two lines from the same side always do; from opposite sides, if they pass one another. */
function meet(above: boolean, { dots }: Drop, otherAbove: boolean, { dots: others }: Drop): boolean {
  if (above === otherAbove) return true
  const [upper, lower] = above ? [dots, others] : [others, dots]
  return Math.min(...upper) < Math.max(...lower) + 1.2
}

/** From where to where a name reaches, with the line that joins several lines. */
const reach = ({ left, width, drops }: Seated): readonly [number, number] => [
  Math.min(left, drops[0]?.x ?? left),
  Math.max(left + width, drops.at(-1)?.x ?? left),
]

const isUnder = (drops: readonly Drop[], seat: Seated): boolean => {
  const [from, to] = reach(seat)
  return drops.some(({ x }) => x > from - clear && x < to + clear)
}

/** Whether a name has room beside another in its row, and is not in the way of the lines to names beyond it. */
function fits(seat: Seated, other: Seated): boolean {
  if (seat.above !== other.above || seat.row > other.row) return true
  if (seat.row < other.row) return !isUnder(other.drops, seat)
  const [[from, to], [otherFrom, otherTo]] = [reach(seat), reach(other)]
  return from > otherTo + apart || otherFrom > to + apart
}

/** A name before it has a place. */
export function waitingFor(name: Named, room: Room): Waiting {
  const { targets, text } = name
  const drops = name.any ? targets.flatMap((target) => dropsFor([target])) : dropsFor(targets)
  return {
    name,
    width: textWidth(text, room.size),
    choices: choicesOf(drops, room),
    long: Math.min(...targets.map(({ from, to }) => to - from)),
    start: Math.min(...targets.map(({ from }) => from)),
    end: Math.max(...targets.map(({ to }) => to)),
  }
}
