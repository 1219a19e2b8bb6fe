import type { Spot } from '../draw/num.ts'

/** Four ways along the edges of squares, each a quarter turn to the right of the one before it, y downwards. */
const ways: readonly Spot[] = [
  [1, 0],
  [0, 1],
  [-1, 0],
  [0, -1],
]

/**
 * The outlines of the dark squares of a grid, each a closed loop of corners that turns at each of them; what is dark lies
 * to the right of the way. Squares that touch at a corner only have outlines of their own.
 */
export function outlinesOf(grid: readonly (readonly boolean[])[]): Spot[][] {
  const isDark = (x: number, y: number): boolean => grid[y]?.[x] === true
  /** Whether an outline runs from a corner in a direction: dark on its right, and not on its left. */
  const runs = ([x, y]: Spot, way: number): boolean => {
    const right = [isDark(x, y), isDark(x - 1, y), isDark(x - 1, y - 1), isDark(x, y - 1)]
    return right[way] === true && right[(way + 3) % 4] !== true
  }
  const seen = new Set<string>()
  const loops: Spot[][] = []
  for (const [y, row] of grid.entries())
    for (const x of row.keys()) if (runs([x, y], 0) && !seen.has(`${x} ${y} 0`)) loops.push(follow([x, y]))
  return loops

  function follow(start: Spot): Spot[] {
    const corners: Spot[] = []
    let [at, way] = [start, 0]
    do {
      seen.add(`${at[0]} ${at[1]} ${way}`)
      const [dx = 0, dy = 0] = ways[way] ?? []
      at = [at[0] + dx, at[1] + dy]
      // The sharpest turn to the right first, so that a corner where two squares touch is not crossed.
      const next = [way + 1, way, way + 3].map((w) => w % 4).find((w) => runs(at, w)) ?? way
      if (next !== way) corners.push(at)
      way = next
    } while (!(at[0] === start[0] && at[1] === start[1] && way === 0))
    return corners
  }
}
