import type { Shape, Way } from './problem.ts'
import { firstFrom, lastUpTo, rasterOf } from './raster.ts'

/** The sizes of boxes on a sheet that matter, and what is left of each when another is cut off it. */
export interface Grid {
  readonly across: Axis
  readonly up: Axis
  /** Each way of lying, and where the smallest box that holds it stands in the grid. */
  readonly ways: readonly { readonly way: Way; readonly i: number; readonly j: number }[]
  /** How much there is to do to fill the grid once. */
  readonly work: number
}

/** One side of the grid. */
export interface Axis {
  readonly sizes: readonly number[]
  /** For size `i` at `i * sizes.length + k`: the largest size beside size `k` in it; only for sizes up to its half. */
  readonly rest: Int32Array
  /** How many sizes are at most half of size `i`. */
  readonly halves: Int32Array
}

export function gridOf({ width, height, ways }: Shape): Grid {
  const across = axisOf(
    width,
    ways.map((way) => way.width),
  )
  const up = axisOf(
    height,
    ways.map((way) => way.height),
  )
  const cuts = (axis: Axis): number => axis.halves.reduce((sum, count) => sum + count, 0)
  return {
    across,
    up,
    ways: ways.map((way) => ({
      way,
      i: firstFrom(across.sizes, way.width),
      j: firstFrom(up.sizes, way.height),
    })),
    work: up.sizes.length * cuts(across) + across.sizes.length * cuts(up),
  }
}

function axisOf(length: number, sides: readonly number[]): Axis {
  const sizes = rasterOf(length, sides)
  const n = sizes.length
  const rest = new Int32Array(n * n)
  const halves = new Int32Array(n)
  for (const [i, size] of sizes.entries()) {
    const half = lastUpTo(sizes, Math.floor(size / 2)) + 1
    halves[i] = half
    for (let k = 0; k < half; k++) rest[i * n + k] = lastUpTo(sizes, size - (sizes[k] ?? 0))
  }
  return { sizes, rest, halves }
}
