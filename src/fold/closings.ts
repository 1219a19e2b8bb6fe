import type { Affine } from './affine.ts'
import type { Link } from './assembly.ts'
import type { Rings } from './rings.ts'
import type { Section } from './section.ts'

/** One way to lay all bodies flat. Exact in a section. */
export interface Closing {
  /** From the flat coordinates of each body to those of the shut card; turned over for a body that lies so. */
  readonly place: readonly Affine[]
  /** Which links are folded; the others stay flat. */
  readonly folded: readonly boolean[]
  readonly extent: number
}

/** Closings of one extent that are looked at before the search goes on to the next; cards have one or two. */
const mostOfOneExtent = 256

/**
 * All ways to shut the card, smallest extent first, and of one extent those with more creases folded first. A crease in
 * no ring is always folded; each group of rings has at least one folded crease, for else it just lies open; unless the
 * structure says otherwise of them. What is left of a tie leaves creases flat that come first in the structure.
 */
export function* closingsOf(section: Section, rings: Rings): Generator<Closing> {
  const { widths, checks } = preparation(section)
  const { direction, offset, place, isViable } = placing(section, rings, checks)
  let limit = Math.max(...widths.map(([from, to]) => to - from))
  while (Number.isFinite(limit) && isViable(1)) {
    const found: Closing[] = []
    let next = Number.POSITIVE_INFINITY
    const visit = (body: number, low: number, high: number): void => {
      if (high - low > limit) next = Math.min(next, high - low)
      if (high - low > limit || found.length >= mostOfOneExtent) return
      if (body === section.bodies) {
        // Smaller ones have been tried in an earlier round.
        if (high - low === limit) found.push(...shut(section, rings, direction, offset, limit))
        return
      }
      for (const sign of [-1, 1]) {
        if (!place(body, sign) || !isViable(body + 1)) continue
        const [from, to] = edges(widths[body], sign, offset[body] ?? 0)
        visit(body + 1, Math.min(low, from), Math.max(high, to))
      }
    }
    visit(1, ...edges(widths[0], direction[0] ?? 1, 0))
    yield* found.sort(byFolds)
    limit = next
  }
}

/** Whether the rings can close at all. */
export const closesAtAll = (section: Section, rings: Rings): boolean =>
  placing(section, rings, preparation(section).checks).isViable(1)

function shut(
  { links }: Section,
  { groupOf }: Rings,
  direction: readonly number[],
  offset: readonly number[],
  extent: number,
): Closing[] {
  const folded = links.map((link) => isFolded(link, direction))
  if (!isShut(links, groupOf, folded)) return []
  const place = direction.map((sign, i): Affine => ({ a: sign, b: 0, c: 0, d: 1, e: offset[i] ?? 0, f: 0 }))
  return [{ place, folded, extent }]
}

/** Whether every group of rings has a folded crease, or creases that are flat because the structure says so. */
export function isShut(
  links: readonly Link[],
  groupOf: readonly number[],
  folded: readonly boolean[],
): boolean {
  const settled = new Set(groupOf.filter((_, i) => folded[i] || links[i]?.shut === 0))
  return groupOf.every((group) => settled.has(group))
}

const isFolded = ({ a, b, over }: Link, direction: readonly number[]): boolean =>
  (direction[a] === direction[b]) === over

/** Whether a link may be folded, or flat, as it is: `ringed` if it is part of a ring. */
export const mayBe = ({ shut }: Link, folded: boolean, ringed: boolean): boolean =>
  shut === undefined ? ringed || folded : folded === shut > 90

/** More folded creases first; of as many, those that leave creases flat that come first in the structure. */
export const byFolds = (x: Closing, y: Closing): number =>
  count(y.folded) - count(x.folded) || compareFolded(x.folded, y.folded)

const count = (all: readonly boolean[]): number => all.filter(Boolean).length

const compareFolded = (x: readonly boolean[], y: readonly boolean[]): number => {
  const i = x.findIndex((folded, k) => folded !== y[k])
  return i < 0 ? 0 : Number(x[i]) - Number(y[i])
}

const edges = ([from, to]: readonly [number, number] = [0, 0], sign: number, at: number): [number, number] =>
  sign > 0 ? [at + from, at + to] : [at - to, at - from]

/** The stretch of u that each body covers, and the links that each body has to earlier ones. */
function preparation({ bodies, plates, links }: Section) {
  const widths = Array.from({ length: bodies }, (_, body): readonly [number, number] => {
    const us = plates
      .filter((plate) => plate.body === body)
      .flatMap(({ rings }) => rings.flat().map(([u]) => u))
    return [Math.min(...us), Math.max(...us)]
  })
  const checks = Array.from({ length: bodies }, (_, body) =>
    links.flatMap((link, i) => {
      const { a, b, lineA, lineB } = link
      const [ua, ub] = [lineA[0][0], lineB[0][0]]
      if (a === body && b < body) return [{ link, i, mine: ua, other: b, theirs: ub }]
      return b === body && a < body ? [{ link, i, mine: ub, other: a, theirs: ua }] : []
    }),
  )
  return { widths, checks }
}

type Checks = ReturnType<typeof preparation>['checks']

/**
 * Bodies laid down one after the other. `isViable(body)` tells whether the bodies from `body` on can be laid so that all
 * rings close; that depends only on where the bodies lie that they hang on, so it is remembered by those.
 */
function placing({ bodies, plates, model }: Section, { groupOf }: Rings, checks: Checks) {
  const shown = plates.find(({ index }) => index === model.shown) ?? plates[0]
  const direction = Array.from({ length: bodies }, () => 0)
  const offset = Array.from({ length: bodies }, () => 0)
  direction[0] = shown?.over ? -1 : 1
  const place = (body: number, sign: number): boolean => {
    direction[body] = sign
    const all = checks[body] ?? []
    const [first, ...more] = all
    const end = ({ other, theirs }: { other: number; theirs: number }) =>
      (offset[other] ?? 0) + (direction[other] ?? 1) * theirs
    if (first) offset[body] = end(first) - sign * first.mine
    if (!all.every(({ link, i }) => mayBe(link, isFolded(link, direction), groupOf[i] !== -1))) return false
    return more.every((check) => end(check) === (offset[body] ?? 0) + sign * check.mine)
  }
  const needed = Array.from({ length: bodies + 1 }, (_, body) => [
    ...new Set(checks.slice(body).flatMap((all) => all.map(({ other }) => other).filter((o) => o < body))),
  ])
  const known = new Map<string, boolean>()
  const isViable = (body: number): boolean => {
    if (body === bodies) return true
    const key = `${body}:${needed[body]?.map((o) => `${direction[o]},${offset[o]}`).join(';')}`
    const before = known.get(key)
    if (before !== undefined) return before
    const viable = [-1, 1].some((sign) => place(body, sign) && isViable(body + 1))
    known.set(key, viable)
    return viable
  }
  return { direction, offset, place, isViable }
}
