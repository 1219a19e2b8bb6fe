import Fraction from 'fraction.js'
import type { Between, InCrease } from '../card/setbacks/between.ts'
import { type Length, mm, plus, toMm } from '../length/length.ts'
import type { Closed, MapCell } from './pose.ts'
import { spotAt } from './space.ts'

type Point = readonly [x: number, y: number]

/** Reads off the map of a shut card what lies in each of its creases. A box has no crease that closes over anything. */
export function inCreaseOf({ plates, map, pose }: Closed): InCrease {
  const faceUp = new Map(plates.map((laid) => [laid.plate, laid.faceUp]))
  return ({ between: [p, q], line }) => {
    const at = pose.get(p)
    if (!at || faceUp.get(p) === faceUp.get(q)) return []
    const [from, to] = [line.from, line.to].map(({ x, y }): Point => {
      const [u, v] = spotAt(at, toMm(x), toMm(y))
      return [u, v]
    })
    return from && to ? map.flatMap((cell) => betweenIn(cell, p, q, [from, to])) : []
  }
}

function betweenIn({ sheets, outline }: MapCell, p: string, q: string, crease: [Point, Point]): Between[] {
  const ends = [p, q].map((name) => sheets.findIndex(({ plate }) => plate === name))
  const [front = -1, back = -1] = ends.sort((a, b) => a - b)
  const first = sheets[front]
  if (!first) return []
  const inside = sheets.slice(front + 1, back)
  return [
    {
      distance: rounded(distance(outline, crease)),
      thickness: plus(first.behind, ...inside.flatMap(({ caliper, behind }) => [caliper, behind])),
      plates: inside.map(({ plate }) => plate),
    },
  ]
}

/** To a millionth of a millimetre: marks of a ruler come out exactly. */
const rounded = (x: number): Length => mm(new Fraction(Math.round(x * 1e6), 1_000_000))

/** Between a convex outline and a line that does not run through it: from a corner of one to a side of the other. */
function distance(outline: readonly Point[], line: readonly [Point, Point]): number {
  const sides = outline.map((point, i): [Point, Point] => [outline.at(i - 1) ?? point, point])
  return Math.min(
    ...outline.map((corner) => toLine(corner, line)),
    ...sides.flatMap((side) => line.map((end) => toLine(end, side))),
  )
}

function toLine([x, y]: Point, [[x0, y0], [x1, y1]]: readonly [Point, Point]): number {
  const [dx, dy] = [x1 - x0, y1 - y0]
  const share = Math.min(1, Math.max(0, ((x - x0) * dx + (y - y0) * dy) / (dx * dx + dy * dy || 1)))
  return Math.hypot(x - x0 - share * dx, y - y0 - share * dy)
}
