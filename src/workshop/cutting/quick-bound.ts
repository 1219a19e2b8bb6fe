import type { Problem, Shape } from './problem.ts'

/**
 * Sheets that the pieces take at the least, told at once: their paper, and their paper when large pieces count for more
 * and small ones for less, in ways that never make a full sheet more than full. Dual feasible functions (S. P. Fekete and
 * J. Schepers, A general framework for bounds for higher-dimensional orthogonal packing problems, Math. Methods Oper.
 * Res. 60 (2004) 311–329), which hold for cuts of any sort. Whole numbers throughout.
 */
export function quickBound({ counts, shapes, supplies }: Problem): number {
  const [shape] = shapes
  if (!shape || shapes.length > 1 || !supplies.every(({ counted }) => counted)) return 0
  const across = weighings(shape.width)
  const up = weighings(shape.height)
  let bound = 0
  for (const along of across)
    for (const upward of up) {
      const full = along.full * upward.full
      const sum = counts.reduce(
        (total, count, kind) => total + count * leastWeight(shape, kind, along.of, upward.of),
        0,
      )
      bound = Math.max(bound, Math.ceil(sum / full))
    }
  return bound
}

/** A kind's weight as it lies lightest. */
function leastWeight(
  { ways }: Shape,
  kind: number,
  along: (side: number) => number,
  upward: (side: number) => number,
): number {
  const weights = ways.flatMap((way) => (way.kind === kind ? [along(way.width) * upward(way.height)] : []))
  return weights.length > 0 ? Math.min(...weights) : 0
}

interface Weighing {
  readonly of: (side: number) => number
  /** Weight of the whole side: no pieces beside each other on it weigh more together. */
  readonly full: number
}

/** Ways to weigh a side of a piece on a side of a sheet. */
function weighings(length: number): Weighing[] {
  const plain: Weighing = { of: (side) => side, full: length }
  const steps = Array.from({ length: 5 }, (_, i): Weighing => {
    const k = i + 1
    // A side that is a whole number of (k + 1)th parts keeps its weight, others are rounded down to kth parts.
    return {
      of: (side) =>
        ((k + 1) * side) % length === 0 ? side * k : Math.floor(((k + 1) * side) / length) * length,
      full: length * k,
    }
  })
  const limits = Array.from({ length: 9 }, (_, i) => Math.floor((length * (i + 1)) / 20)).filter(
    (limit) => limit > 0,
  )
  const steep = limits.map(
    (limit): Weighing => ({
      of: (side) => (side > length - limit ? length : side >= limit ? side : 0),
      full: length,
    }),
  )
  return [plain, ...steps, ...steep]
}
