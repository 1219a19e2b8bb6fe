import type { Structure } from '../../src/card/structure.ts'
import type { Closed, Laid } from '../../src/fold/pose.ts'
import { toMm } from '../../src/length/length.ts'
import { inSpace } from './checker.ts'

interface Rect {
  readonly left: number
  readonly right: number
  readonly bottom: number
  readonly top: number
}

const rectOf = ({ left, bottom, size }: Laid): Rect => ({
  left: toMm(left),
  bottom: toMm(bottom),
  right: toMm(left) + toMm(size.width),
  top: toMm(bottom) + toMm(size.height),
})

const small = 1e-9
const overlap = (a: Rect, b: Rect): boolean =>
  Math.min(a.right, b.right) - Math.max(a.left, b.left) > small &&
  Math.min(a.top, b.top) - Math.max(a.bottom, b.bottom) > small

/**
 * Checks the order of the layers of a shut card whose plates are rectangles, by the rules of flat folding spelled out
 * anew: valleys and mountains, bonds, nothing in a fold that runs past it, no two folds at one place interlocked, and
 * nothing that weaves through a crease that lies open.
 */
export function layerTroublesIn(structure: Structure, closed: Closed): string[] {
  const troubles: string[] = []
  const level = new Map(closed.order.map((name, i) => [name, closed.order.length - i]))
  const above = (a: string, b: string): boolean => (level.get(a) ?? 0) > (level.get(b) ?? 0)
  const between = (c: string, a: string, b: string): boolean => above(c, a) !== above(c, b)
  const laid = new Map(closed.plates.map((plate) => [plate.plate, plate]))
  const rects = new Map(closed.plates.map((plate) => [plate.plate, rectOf(plate)]))
  const meet = (a: string, b: string): boolean => {
    const [x, y] = [rects.get(a), rects.get(b)]
    return x !== undefined && y !== undefined && overlap(x, y)
  }
  for (const { plate, onto, side } of structure.bonds)
    if (meet(plate, onto) && above(plate, onto) !== ((side === 'face') === laid.get(onto)?.faceUp))
      troubles.push(`${plate} is on the wrong side of ${onto}`)

  const creases = structure.hinges.flatMap(({ between: [p, q], line, fold }) => {
    const [pose, facing] = [closed.pose.get(p), laid.get(p)]
    if (!pose || !facing) return []
    const folded = meet(p, q)
    if (folded && above(q, p) !== ((fold === 'valley') === facing.faceUp))
      troubles.push(`${p} and ${q} are the wrong way round`)
    const ends = [line.from, line.to].map(({ x, y }) => inSpace(pose, [toMm(x), toMm(y)]))
    const [xs, ys] = [ends.map(([x]) => x), ends.map(([, y]) => y)]
    const crease = {
      left: Math.min(...xs),
      right: Math.max(...xs),
      bottom: Math.min(...ys),
      top: Math.max(...ys),
    }
    return [{ p, q, crease, folded }]
  })
  for (const { p, q, crease, folded } of creases)
    for (const [name, rect] of rects) {
      const upright = crease.right - crease.left < small
      const past = upright
        ? rect.left < crease.left - small &&
          rect.right > crease.left + small &&
          overlap({ ...crease, left: rect.left, right: rect.right }, rect)
        : rect.bottom < crease.bottom - small &&
          rect.top > crease.bottom + small &&
          overlap({ ...crease, bottom: rect.bottom, top: rect.top }, rect)
      if (past && between(name, p, q))
        troubles.push(`${name} ${folded ? 'is caught in the fold of' : 'weaves between'} ${p} and ${q}`)
    }
  const folds = creases.filter(({ folded }) => folded)
  for (const [i, a] of folds.entries())
    for (const b of folds.slice(i + 1)) {
      const one = (['left', 'right', 'bottom', 'top'] as const).every(
        (k) => Math.abs(a.crease[k] - b.crease[k]) < small,
      )
      if (!one || !meet(a.p, b.p)) continue
      if (between(b.p, a.p, a.q) !== between(b.q, a.p, a.q))
        troubles.push(`${a.p}, ${a.q} and ${b.p}, ${b.q} interlock`)
    }
  return troubles
}
