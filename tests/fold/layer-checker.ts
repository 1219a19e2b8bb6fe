import type { Structure } from '../../src/card/structure.ts'
import type { Closed } from '../../src/fold/pose.ts'
import { toMm } from '../../src/length/length.ts'
import { inSpace, isInside, plateOf } from './checker.ts'

type XY = readonly [number, number]

interface Crease {
  readonly p: string
  readonly q: string
  readonly from: XY
  readonly to: XY
}

/** The plates just beside a point of a crease, on its two sides. */
type Sides = readonly [left: readonly string[], right: readonly string[]]

/** How far beside a crease is just beside it, in mm. */
const beside = 1e-4
/** Where along a crease it is looked at. */
const shares = [0.013, 0.21, 0.37, 0.5, 0.68, 0.83, 0.991]

/**
 * Checks the order of the layers of a shut card by the rules of flat folding spelled out anew, point by point along its
 * creases: valleys and mountains, bonds, nothing in a fold that runs past it, no two folds at one place interlocked, and
 * nothing that weaves through a crease that lies open.
 */
export function layerTroublesIn(structure: Structure, closed: Closed): string[] {
  const level = new Map(closed.order.map((name, i) => [name, closed.order.length - i]))
  const above = (a: string, b: string): boolean => (level.get(a) ?? 0) > (level.get(b) ?? 0)
  const between = (c: string, a: string, b: string): boolean => above(c, a) !== above(c, b)
  const faceUp = new Map(closed.plates.map((laid) => [laid.plate, laid.faceUp]))
  const loops = new Map(closed.plates.map(({ plate }) => [plate, loopsOf(structure, closed, plate)]))
  const at = (point: XY): string[] =>
    [...loops].flatMap(([name, own]) =>
      own.filter((loop) => isInside(point, loop)).length % 2 === 1 ? [name] : [],
    )
  const troubles = new Set<string>()
  for (const { plate, onto, side } of structure.bonds)
    if (faceUp.has(plate) && above(plate, onto) !== ((side === 'face') === faceUp.get(onto)))
      troubles.add(`${plate} is on the wrong side of ${onto}`)

  const creases = structure.hinges.flatMap(({ between: [p, q], line }): Crease[] => {
    const pose = closed.pose.get(p)
    const [a, b] = [line.from, line.to].map(({ x, y }) => pose && inSpace(pose, [toMm(x), toMm(y)]))
    return a && b && faceUp.has(q) ? [{ p, q, from: [a[0], a[1]], to: [b[0], b[1]] }] : []
  })
  for (const crease of creases) {
    const { p, q } = crease
    const fold = structure.hinges.find((h) => h.between[0] === p && h.between[1] === q)?.fold
    for (const point of pointsOn(crease)) {
      const sides = sidesAt(crease, point, at)
      const folded = foldedOn(crease, sides)
      if (folded && above(q, p) !== ((fold === 'valley') === faceUp.get(p)))
        troubles.add(`${p} and ${q} are the wrong way round`)
      for (const name of sides[0].filter((other) => sides[1].includes(other)))
        if (between(name, p, q))
          troubles.add(`${name} ${folded ? 'is caught in the fold of' : 'weaves between'} ${p} and ${q}`)
      for (const other of creases.filter((c) => c !== crease && liesOn(point, c))) {
        const across = foldedOn(other, sides)
        const [own, its] = [inOrder(crease, sides), inOrder(other, sides)]
        const clash =
          folded && across
            ? folded === across && between(other.p, p, q) !== between(other.q, p, q)
            : folded
              ? between(its[folded === sides[0] ? 0 : 1], p, q)
              : !across && above(own[0], its[0]) !== above(own[1], its[1])
        if (clash) troubles.add(`${p}, ${q} and ${other.p}, ${other.q} interlock`)
      }
    }
  }
  return [...troubles]
}

function loopsOf(structure: Structure, { pose }: Closed, name: string): XY[][] {
  const [{ outline, holes }, placement] = [plateOf(structure, name), pose.get(name)]
  if (!placement) return []
  return [outline, ...holes].map((loop) =>
    loop.map(({ x, y }): XY => {
      const [u, v] = inSpace(placement, [toMm(x), toMm(y)])
      return [u, v]
    }),
  )
}

const pointsOn = ({ from, to }: Crease): XY[] =>
  shares.map((t): XY => [from[0] + t * (to[0] - from[0]), from[1] + t * (to[1] - from[1])])

function sidesAt({ from, to }: Crease, [x, y]: XY, at: (point: XY) => string[]): Sides {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]]
  const step = beside / Math.hypot(dx, dy)
  return [at([x - dy * step, y + dx * step]), at([x + dy * step, y - dx * step])]
}

/** The side on which both its plates lie, if it is folded. */
const foldedOn = ({ p, q }: Crease, sides: Sides): readonly string[] | undefined =>
  sides.find((names) => names.includes(p) && names.includes(q))

/** The two plates of an open crease, the one on the first side first. */
const inOrder = ({ p, q }: Crease, [left]: Sides): readonly [string, string] =>
  left.includes(p) ? [p, q] : [q, p]

/** Whether a point lies on a crease between its ends. */
function liesOn([x, y]: XY, { from, to }: Crease): boolean {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]]
  const length = Math.hypot(dx, dy)
  const along = ((x - from[0]) * dx + (y - from[1]) * dy) / length
  const aside = ((x - from[0]) * dy - (y - from[1]) * dx) / length
  return Math.abs(aside) < beside / 10 && along > 0 && along < length
}
