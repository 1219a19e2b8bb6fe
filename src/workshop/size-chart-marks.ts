import type { Point } from '../card/structure.ts'
import { type Size, same, zero } from '../length/length.ts'
import type { Wording } from '../wording/wording.ts'

/** A point of a piece as a hand finds it: a corner, a mark on an edge, or so far across and so far up. */
export function markWords({ x, y }: Point, { width, height }: Size, { say, bare }: Wording): string {
  const upright = same(x, zero) ? 'left' : same(x, width) ? 'right' : undefined
  const level = same(y, zero) ? 'lower' : same(y, height) ? 'top' : undefined
  if (upright && level) return say('chart.corner', { level, upright })
  if (upright) return say('chart.on-edge', { edge: upright, at: bare(y) })
  if (level) return say('chart.on-edge', { edge: level, at: bare(x) })
  return say('chart.point', { across: bare(x), up: bare(y) })
}
