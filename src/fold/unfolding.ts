import { type Affine, after, apply, identity } from './affine.ts'
import type { Assembly, Link } from './assembly.ts'
import type { Closing } from './closings.ts'
import { layOut } from './layout.ts'
import type { Rings } from './rings.ts'
import type { Shut } from './shut.ts'

/**
 * In which order a hand opens the creases of the shut card one after the other, each by half a turn, without lifting one
 * layer through another: what swings must lie all in front of what stays, or all behind. Backwards it is the order in
 * which the card is folded. Rings move as one; their creases are not in the list.
 *
 * @returns undefined when some creases are left that hold each other shut.
 */
export function unfoldingOf({ layout, order }: Shut, rings: Rings): number[] | undefined {
  const { assembly, closing, groups } = layout
  const links = assembly.links.flatMap((_, i) => (rings.groupOf[i] === -1 && closing.folded[i] ? [i] : []))
  const far = new Map(links.map((link) => [link, swinging(assembly, link)]))
  // Which creases are open all but settles what is left to do, so a way that failed once is not gone again.
  const failed = new Set<string>()
  const open = (state: State, left: readonly number[]): number[] | undefined => {
    if (left.length === 0) return []
    if (failed.has(left.join()) || failed.size > mostStates) return undefined
    for (const link of left) {
      const swings = far.get(link) ?? new Set()
      const sides = sidesOf(state, swings)
      if (sides.size > 1) continue
      const rest = open(
        swung(assembly, state, link, swings, sides.has(true)),
        left.filter((other) => other !== link),
      )
      if (rest) return [link, ...rest]
    }
    failed.add(left.join())
    return undefined
  }
  return open({ closing, order, groups }, links)
}

/** States looked at before giving up. */
const mostStates = 500

/** The card part of the way: flat, with its layers from front to back. */
interface State {
  readonly closing: Closing
  readonly order: readonly number[]
  readonly groups: readonly (readonly number[])[]
}

/** The plates on the far side of a link, seen from the plate that stays put. */
function swinging({ links, plates, bodies }: Assembly, link: number): ReadonlySet<number> {
  const near = new Set([0])
  for (let grown = true; grown; ) {
    grown = false
    for (const [i, { a, b }] of links.entries()) {
      if (i === link || near.has(a) === near.has(b)) continue
      near.add(a).add(b)
      grown = near.size < bodies
    }
  }
  return new Set(plates.flatMap(({ body }, i) => (near.has(body) ? [] : [i])))
}

/** Whether what swings lies in front of what stays and overlaps it (true), behind it (false), or both. */
function sidesOf({ order, groups }: State, swings: ReadonlySet<number>): ReadonlySet<boolean> {
  const depth = new Map(order.map((plate, i) => [plate, i]))
  const sides = new Set<boolean>()
  for (const group of groups)
    for (const i of group)
      for (const j of group)
        if (swings.has(i) && !swings.has(j)) sides.add((depth.get(i) ?? 0) < (depth.get(j) ?? 0))
  return sides
}

/** What swings, turned over by half a turn about a link: to the front, or to the back. */
function swung(
  assembly: Assembly,
  { closing, order }: State,
  link: number,
  swings: ReadonlySet<number>,
  toFront: boolean,
): State {
  const { links, plates } = assembly
  const { a, lineA }: Pick<Link, 'a' | 'lineA'> = links[link] ?? {
    a: 0,
    lineA: [
      [0, 0],
      [0, 1],
    ],
  }
  const mirror = mirrorAt(lineA.map((p) => apply(closing.place[a] ?? identity, p)))
  const bodies = new Set([...swings].map((i) => plates[i]?.body ?? -1))
  const next: Closing = {
    ...closing,
    place: closing.place.map((map, body) => (bodies.has(body) ? after(mirror, map) : map)),
    folded: closing.folded.map((folded, i) => folded && i !== link),
  }
  const moved = order.filter((i) => swings.has(i)).reverse()
  const rest = order.filter((i) => !swings.has(i))
  return {
    closing: next,
    order: toFront ? [...moved, ...rest] : [...rest, ...moved],
    groups: layOut(assembly, next).groups,
  }
}

/** The reflection at a line. */
function mirrorAt([[x0, y0] = [0, 0], [x1, y1] = [0, 1]]: readonly (readonly [number, number])[]): Affine {
  const [dx, dy] = [x1 - x0, y1 - y0]
  const size = dx * dx + dy * dy
  const [cos, sin] = [(dx * dx - dy * dy) / size, (2 * dx * dy) / size]
  return { a: cos, b: sin, c: sin, d: -cos, e: x0 - cos * x0 - sin * y0, f: y0 - sin * x0 + cos * y0 }
}
