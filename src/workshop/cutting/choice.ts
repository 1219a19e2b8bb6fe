import type { Box } from '../fit/cutting/boxes.ts'
import type { Grid } from './grid.ts'

/** How the best box of a size is made, as one number: what is done, and a place in the grid or a way of lying. */
export const choice = {
  nothing: -1,
  way: (n: number): number => n * 4,
  beside: (k: number): number => k * 4 + 1,
  above: (k: number): number => k * 4 + 2,
  narrower: 3,
  lower: 7,
} as const

/** The box that the choices lead to, no larger than its pieces need; undefined when it holds none. */
export function boxAt(grid: Grid, choices: Int32Array, i: number, j: number): Box | undefined {
  const { across, up } = grid
  const at = (k: number, l: number): Box | undefined => boxAt(grid, choices, k, l)
  const chosen = choices[i * up.sizes.length + j] ?? choice.nothing
  if (chosen === choice.nothing) return undefined
  if (chosen === choice.narrower) return at(i - 1, j)
  if (chosen === choice.lower) return at(i, j - 1)
  const n = chosen >> 2
  if (chosen % 4 === 1)
    return joinedOr(at(n, j), at(across.rest[i * across.sizes.length + n] ?? 0, j), 'beside')
  if (chosen % 4 === 2) return joinedOr(at(i, n), at(i, up.rest[j * up.sizes.length + n] ?? 0), 'above')
  const way = grid.ways[n]?.way
  return way && pieceBox(way)
}

/** A piece alone. */
export const pieceBox = ({
  width,
  height,
  kind,
  turned,
}: Pick<Box, 'width' | 'height'> & { kind: number; turned: boolean }): Box => ({
  width,
  height,
  made: { of: 'piece', kind, turned },
})

/** Two boxes side by side or one above the other. */
export function joined(first: Box, second: Box, lies: 'beside' | 'above'): Box {
  const beside = lies === 'beside'
  return {
    width: beside ? first.width + second.width : Math.max(first.width, second.width),
    height: beside ? Math.max(first.height, second.height) : first.height + second.height,
    made: { of: 'parts', first, second, lies },
  }
}

/** The same of two boxes that may hold nothing. */
const joinedOr = (
  first: Box | undefined,
  second: Box | undefined,
  lies: 'beside' | 'above',
): Box | undefined => (first && second ? joined(first, second, lies) : (first ?? second))

/** How many of each kind a box holds. */
export function countsIn(box: Box, kinds: number): number[] {
  const counts = Array.from({ length: kinds }, () => 0)
  const add = ({ made }: Box): void => {
    if (made.of === 'piece') counts[made.kind] = (counts[made.kind] ?? 0) + 1
    else {
      add(made.first)
      add(made.second)
    }
  }
  add(box)
  return counts
}

/** The box with no more of each kind than are wanted; undefined when none is. */
export function atMost(box: Box, counts: readonly number[]): Box | undefined {
  const left = [...counts]
  const keep = (part: Box): Box | undefined => {
    const { made } = part
    if (made.of === 'parts') {
      const [first, second] = [keep(made.first), keep(made.second)]
      return first === made.first && second === made.second ? part : joinedOr(first, second, made.lies)
    }
    const count = left[made.kind] ?? 0
    left[made.kind] = count - 1
    return count > 0 ? part : undefined
  }
  return keep(box)
}
