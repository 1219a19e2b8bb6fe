import { listOf } from '../length/finding.ts'
import { formatLength } from '../length/format.ts'
import { mustCover } from '../length/grid.ts'
import { type Length, part, plus, type Size, times, toMm, zero } from '../length/length.ts'
import type { Border, Layer } from './card.ts'
import type { Reading } from './reading.ts'

type Edge = keyof Border
type More = Partial<Border>

export const edges: readonly Edge[] = ['left', 'right', 'top', 'bottom']

/** Borders that can grow together: one, two that meet at a corner, or all. */
const ways: readonly (readonly Edge[])[] = [
  ...edges.map((edge) => [edge]),
  ['left', 'top'],
  ['left', 'bottom'],
  ['right', 'top'],
  ['right', 'bottom'],
  edges,
]

/**
 * Says which borders of a layer have to grow, and to what, so that it fits and as much of it is left as can be.
 *
 * @param fits whether it does when its borders are so much wider; then also when they are wider still.
 */
export function widerBorders(
  { grid, unit }: Pick<Reading, 'grid' | 'unit'>,
  { border }: Layer,
  size: Size,
  fits: (more: More) => boolean,
): string {
  const cures = ways.flatMap((own) => {
    const steps = stepsFor(own, size, grid)
    const n = leastOf(steps.count, (k) => fits(steps.more(k)))
    return n === undefined ? [] : [{ own, more: steps.more(n) }]
  })
  const left = ({ more }: { more: More }): number => areaOf(size, more)
  const [best] = cures.sort((a, b) => left(b) - left(a))
  if (!best) return 'Put it on another panel'
  const say = (x: Length): string => formatLength(x, unit)
  if (best.own === edges) return `Make its border ${say(best.more.left ?? zero)} wider all round`
  const said = best.own.map(
    (edge) => `${say(plus(border[edge], best.more[edge] ?? zero))} at its ${edge} edge`,
  )
  return `Leave a border of at least ${listOf(said)}`
}

/** How borders grow step by step, on the ruler: two by the same share of the layer, all alike. */
function stepsFor(
  own: readonly Edge[],
  { width, height }: Size,
  grid: Length,
): { count: number; more: (n: number) => More } {
  const marks = (extent: Length): number => Math.ceil(extent.div(grid).valueOf())
  if (own === edges) {
    const half = Math.ceil(Math.min(marks(width), marks(height)) / 2)
    return { count: half - 1, more: (n) => Object.fromEntries(own.map((edge) => [edge, times(grid, n)])) }
  }
  const along = (edge: Edge): Length => (edge === 'left' || edge === 'right' ? width : height)
  const all = Math.max(...own.map((edge) => marks(along(edge))))
  const more = (n: number): More =>
    Object.fromEntries(own.map((edge) => [edge, mustCover(part(times(along(edge), n), all), grid)]))
  return { count: all - 1, more }
}

function areaOf(
  { width, height }: Size,
  { left = zero, right = zero, top = zero, bottom = zero }: More,
): number {
  return (toMm(width) - toMm(left) - toMm(right)) * (toMm(height) - toMm(top) - toMm(bottom))
}

/** The least whole number from 1 to `most` that is enough, when all above one that is are. */
function leastOf(most: number, isEnough: (n: number) => boolean): number | undefined {
  if (most < 1 || !isEnough(most)) return undefined
  let [low, high] = [0, most]
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2)
    if (isEnough(middle)) high = middle
    else low = middle
  }
  return high
}
