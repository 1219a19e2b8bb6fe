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
  readonly steps: Steps
  /** In steps. */
  readonly sizes: readonly number[]
  /** For size `i` at `i * sizes.length + k`: the largest size beside size `k` in it; only for sizes up to its half. */
  readonly rest: Int32Array
  /** How many sizes are at most half of size `i`. */
  readonly halves: Int32Array
}

/** Steps of so many marks in which sizes are told, and which way what lies between is rounded. */
export interface Steps {
  readonly marks: number
  readonly rounded: 'up' | 'down'
}

/** Every mark is a step: nothing is rounded. */
const exactly: Steps = { marks: 1, rounded: 'down' }

/**
 * The grid of a sheet.
 *
 * @param steps along and up the sheet: rounded up, what fits the grid fits the sheet; rounded down, what fits the sheet
 * fits the grid.
 */
export function gridOf(
  { width, height, ways }: Shape,
  [along, upward]: readonly [Steps, Steps] = [exactly, exactly],
): Grid {
  const across = axisOf(
    width,
    ways.map((way) => way.width),
    along,
  )
  const up = axisOf(
    height,
    ways.map((way) => way.height),
    upward,
  )
  const cuts = (axis: Axis): number => axis.halves.reduce((sum, count) => sum + count, 0)
  return {
    across,
    up,
    ways: ways.map((way) => ({
      way,
      i: firstFrom(across.sizes, inSteps(way.width, along, width)),
      j: firstFrom(up.sizes, inSteps(way.height, upward, height)),
    })),
    work: up.sizes.length * cuts(across) + across.sizes.length * cuts(up),
  }
}

function axisOf(length: number, sides: readonly number[], steps: Steps): Axis {
  const sizes = rasterOf(
    Math.floor(length / steps.marks),
    sides.map((side) => inSteps(side, steps, length)),
  )
  const n = sizes.length
  const rest = new Int32Array(n * n)
  const halves = new Int32Array(n)
  for (const [i, size] of sizes.entries()) {
    const half = lastUpTo(sizes, Math.floor(size / 2)) + 1
    halves[i] = half
    for (let k = 0; k < half; k++) rest[i * n + k] = lastUpTo(sizes, size - (sizes[k] ?? 0))
  }
  return { steps, sizes, rest, halves }
}

/** A side in steps; one that is rounded up to more than the sheet has takes all of it. */
const inSteps = (side: number, { marks, rounded }: Steps, length: number): number =>
  rounded === 'up' ? Math.min(Math.ceil(side / marks), Math.floor(length / marks)) : Math.floor(side / marks)

/**
 * Where a box of so many marks stands in the grid for bounds: what is beside it is no more than beside that size. -1
 * when it is smaller than every size.
 */
export const placeOf = (marks: number, { sizes, steps }: Axis): number =>
  // Sums of sides have the same beside them as the next size of the raster; rounded ones may be no such sums.
  steps.marks === 1 ? firstFrom(sizes, marks) : lastUpTo(sizes, Math.floor(marks / steps.marks))
