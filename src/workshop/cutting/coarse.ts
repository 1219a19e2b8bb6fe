import { type Grid, gridOf, type Steps } from './grid.ts'
import type { Shape } from './problem.ts'
import { rasterOf } from './raster.ts'

/** The grids of a sheet, of which only the last may hold what cannot be cut. */
export interface Grids {
  /** For patterns of no more pieces than are wanted, which take longest. */
  readonly grid: Grid
  /** For patterns of any number of each piece. */
  readonly fine: Grid
  /** For bounds: with room for all that can be cut. */
  readonly bounding: Grid
}

/** What filling a grid may cost for nothing to be rounded. */
const mostWork = 150_000_000
/** Sizes along a side when they are rounded: for the patterns that take longest, and for the others. */
const coarseSizes = 120
const fineSizes = 400

/**
 * The grids of a sheet: the same one, exact, unless its sizes are too many, as with pieces in inches and a knife's gap in
 * millimetres. Then they are rounded, so that plans can still be cut and bounds still hold, but may lie further apart.
 */
export function gridsOf(shape: Shape): Grids {
  const across = sidesOf(shape, 'width')
  const up = sidesOf(shape, 'height')
  const [nx, ny] = [across, up].map(({ length, sides }) => rasterOf(length, sides).length) as [number, number]
  const kinds = new Set(shape.ways.map((way) => way.kind)).size
  if (((nx * ny * (nx + ny)) / 4) * (kinds + 3) <= mostWork) {
    const grid = gridOf(shape)
    return { grid, fine: grid, bounding: grid }
  }
  return coarseGrids(shape, coarseSizes, fineSizes)
}

/**
 * The grids of a sheet with rounded sizes.
 *
 * @param coarse sizes along a side for the patterns that take longest.
 * @param fine sizes along a side for the others, and for bounds.
 */
export function coarseGrids(shape: Shape, coarse: number, fine: number): Grids {
  const rounded = (way: Steps['rounded'], sizes: number): Grid =>
    gridOf(shape, [
      bestSteps(sidesOf(shape, 'width'), way, sizes),
      bestSteps(sidesOf(shape, 'height'), way, sizes),
    ])
  return { grid: rounded('up', coarse), fine: rounded('up', fine), bounding: rounded('down', fine) }
}

interface Sides {
  readonly length: number
  readonly sides: readonly number[]
}

const sidesOf = (shape: Shape, along: 'width' | 'height'): Sides => ({
  length: shape[along],
  sides: shape.ways.map((way) => way[along]),
})

/** The steps by which least is lost to rounding, in proportion to the sides. */
function bestSteps({ length, sides }: Sides, rounded: Steps['rounded'], sizes: number): Steps {
  // No step is longer than a side, or the side would be nothing when it is rounded down.
  const least = Math.max(1, Math.floor(length / sizes))
  const most = Math.min(2 * least, ...sides)
  let best = { marks: Math.max(1, Math.min(least, most)), lost: Number.POSITIVE_INFINITY }
  for (let marks = best.marks; marks <= most; marks++) {
    const lost = sides.reduce(
      (sum, side) => {
        const steps = rounded === 'up' ? Math.ceil(side / marks) : Math.floor(side / marks)
        return sum + Math.abs(steps * marks - side) / side
      },
      (length % marks) / length,
    )
    if (lost < best.lost) best = { marks, lost }
  }
  return { marks: best.marks, rounded }
}
