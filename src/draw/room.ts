import { covers } from '../fold/assembly.ts'
import { type Box, boxAround } from './box.ts'
import type { Spot } from './num.ts'

/**
 * The largest upright rectangle inside an outline of upright and level edges; of any other, one about its middle, as wide
 * for its height as the outline is.
 */
export function roomIn(loop: readonly Spot[]): Box {
  const around = boxAround(loop)
  const [xs, ys] = [ascending(loop.map(([x]) => x)), ascending(loop.map(([, y]) => y))]
  const isUpright = loop.every(([x, y], i) => {
    const [nextX, nextY] = loop[(i + 1) % loop.length] ?? [x, y]
    return same(x, nextX) || same(y, nextY)
  })
  if (!isUpright) return aboutMiddle(loop, around)
  if (loop.length <= 4) return around
  let largest: Box | undefined
  for (const [i, left] of xs.entries())
    for (const right of xs.slice(i + 1))
      for (const [k, top] of ys.entries())
        for (const bottom of ys.slice(k + 1)) {
          const box = { left, right, top, bottom }
          if (area(box) > (largest ? area(largest) : 0) && isFilled(box, loop, xs, ys)) largest = box
        }
  return largest ?? around
}

const area = ({ left, right, top, bottom }: Box): number => (right - left) * (bottom - top)

const same = (a: number, b: number): boolean => Math.abs(a - b) < 1e-6

const ascending = (all: readonly number[]): number[] => {
  const sorted = [...all].sort((a, b) => a - b)
  return sorted.filter((x, i) => i === 0 || !same(x, sorted[i - 1] ?? x))
}

/** Whether every cell between the corners' coordinates that is in the box is inside the outline. */
const isFilled = (box: Box, loop: readonly Spot[], xs: readonly number[], ys: readonly number[]): boolean =>
  middles(xs, box.left, box.right).every((x) =>
    middles(ys, box.top, box.bottom).every((y) => covers([loop], x, y)),
  )

const middles = (marks: readonly number[], from: number, to: number): number[] =>
  marks.flatMap((mark, i) => {
    const next = marks[i + 1]
    return next !== undefined && mark >= from && next <= to ? [(mark + next) / 2] : []
  })

/** A slanting outline has room about its centre of area: the box round it, shrunk until its corners are inside. */
function aboutMiddle(loop: readonly Spot[], { left, right, top, bottom }: Box): Box {
  const [x, y] = centreOf(loop)
  const shrunk = (share: number): Box => {
    const [w, h] = [((right - left) / 2) * share, ((bottom - top) / 2) * share]
    return { left: x - w, right: x + w, top: y - h, bottom: y + h }
  }
  const fits = (box: Box): boolean =>
    [box.left, box.right].every((u) => [box.top, box.bottom].every((v) => covers([loop], u, v)))
  let [low, high] = [0, 1]
  for (let i = 0; i < 8; i++) {
    const half = (low + high) / 2
    if (fits(shrunk(half))) low = half
    else high = half
  }
  return shrunk(low)
}

function centreOf(loop: readonly Spot[]): Spot {
  const parts = loop.map(([x1, y1], i) => {
    const [x0, y0] = loop.at(i - 1) ?? [x1, y1]
    const cross = x0 * y1 - x1 * y0
    return [(x0 + x1) * cross, (y0 + y1) * cross, 3 * cross] as const
  })
  const sum = (k: 0 | 1 | 2): number => parts.reduce((all, part) => all + part[k], 0)
  return [sum(0) / sum(2), sum(1) / sum(2)]
}
