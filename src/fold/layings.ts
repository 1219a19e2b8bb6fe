import { type Affine, after, apply, determinant, identity, inverse, type Whole } from './affine.ts'
import type { Assembly, Link } from './assembly.ts'
import { byFolds, type Closing, isShut, mayBe } from './closings.ts'
import type { Rings } from './rings.ts'

/** Points that should be one may be apart by this much, in mm, for errors of rounding. */
export const sameSpot = 1e-6

/** Ways to lay a card flat that are looked at; cards whose creases are not parallel have few creases. */
const mostLayings = 4096

/**
 * All ways to lay flat a card whose creases are not parallel: each crease is left flat, or reflects what hangs on it.
 * Smallest half perimeter first, then as for parallel creases.
 */
export function layingsOf(assembly: Assembly, rings: Rings): Closing[] {
  const { links } = assembly
  const found = [...flatLayings(assembly, rings)].flatMap(({ place, folded, gap }): Closing[] =>
    gap < sameSpot && isShut(links, rings.groupOf, folded)
      ? [{ place, folded, extent: extentOf(assembly, place) }]
      : [],
  )
  return found.sort((x, y) => compareExtents(x.extent, y.extent) || byFolds(x, y))
}

/** The smallest gap, in mm, that a ring has to leave however the card is laid. */
export const smallestGap = (assembly: Assembly, rings: Rings): number =>
  Math.min(...[...flatLayings(assembly, rings, Number.POSITIVE_INFINITY)].map(({ gap }) => gap))

interface Laying {
  readonly place: readonly Affine[]
  readonly folded: readonly boolean[]
  /** The largest distance between points of creases that should be one. */
  readonly gap: number
}

function* flatLayings(assembly: Assembly, { groupOf }: Rings, most = sameSpot): Generator<Laying> {
  const { bodies, links, plates, model } = assembly
  const shown = plates.find(({ index }) => index === model.shown) ?? plates[0]
  const place: Affine[] = [shown?.over ? turnedOver : identity]
  const perMm = Number(model.perMm)
  const checks = Array.from({ length: bodies }, (_, body) =>
    links.flatMap((link, i) => (Math.max(link.a, link.b) === body ? [{ link, i }] : [])),
  )
  let given = 0
  function* visit(body: number, gap: number): Generator<Laying> {
    if (given >= mostLayings) return
    if (body === bodies) {
      given++
      const folded = links.map((link) => isFolded(link, place))
      yield { place: [...place], folded, gap }
      return
    }
    const [first] = checks[body] ?? []
    if (!first) return
    for (const folded of [true, false]) {
      place[body] = laidBy(first.link, body, place, folded)
      let worst = gap
      let may = true
      for (const { link, i } of checks[body] ?? []) {
        may &&= mayBe(link, isFolded(link, place), groupOf[i] !== -1)
        worst = Math.max(worst, gapAt(link, place) / perMm)
      }
      if (may && worst <= most) yield* visit(body + 1, worst)
    }
  }
  yield* visit(1, 0)
}

const turnedOver: Affine = { ...identity, a: -1 }

const isFolded = ({ a, b, over }: Link, place: readonly Affine[]): boolean =>
  (determinant(place[a] ?? identity) > 0 === determinant(place[b] ?? identity) > 0) === over

/** Where a body lies that hangs by `link` on one that is laid already. */
function laidBy(
  { a, b, lineA, lineB, over }: Link,
  body: number,
  place: readonly Affine[],
  folded: boolean,
): Affine {
  const forwards = b === body
  const there = place[forwards ? a : b] ?? identity
  const [from, to] = forwards ? [lineB, lineA] : [lineA, lineB]
  return after(there, matching(from, to, folded !== over))
}

/** The rigid map that carries line `from` to line `to`, turned over about it if `over`. */
function matching([f0, f1]: Link['lineA'], [t0, t1]: Link['lineA'], over: boolean): Affine {
  const along = ([x0, y0]: Whole, [x1, y1]: Whole): Affine => {
    const length = Math.hypot(x1 - x0, y1 - y0)
    const [cos, sin] = [(x1 - x0) / length, (y1 - y0) / length]
    return { a: cos, b: -sin, c: sin, d: cos, e: x0, f: y0 }
  }
  const flip: Affine = over ? { ...identity, d: -1 } : identity
  return after(along(t0, t1), after(flip, inverse(along(f0, f1))))
}

function gapAt({ a, b, lineA, lineB }: Link, place: readonly Affine[]): number {
  const ends = (body: number, line: Link['lineA']) =>
    line.map((point) => apply(place[body] ?? identity, point))
  const theirs = ends(b, lineB)
  return Math.max(
    ...ends(a, lineA).map(([x, y], i) => Math.hypot(x - (theirs[i]?.[0] ?? 0), y - (theirs[i]?.[1] ?? 0))),
  )
}

/** Width and height together, along the edges of the plate that stays put. */
function extentOf({ plates, model }: Assembly, place: readonly Affine[]): number {
  const shown = plates.find(({ index }) => index === model.shown)
  const back = shown ? inverse(after(place[shown.body] ?? identity, shown.map)) : identity
  const points = plates.flatMap(({ body, rings }) =>
    rings.flat().map((point) => apply(back, apply(place[body] ?? identity, point))),
  )
  const span = (k: 0 | 1): number =>
    Math.max(...points.map((p) => p[k])) - Math.min(...points.map((p) => p[k]))
  return span(0) + span(1)
}

const compareExtents = (x: number, y: number): number => (Math.abs(x - y) < 1e-6 ? 0 : x - y)
