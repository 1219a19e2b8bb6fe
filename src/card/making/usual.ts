import { onGrid, type Rounding } from '../../length/grid.ts'
import type { Length } from '../../length/length.ts'
import type { BuildInput } from '../style.ts'

/** `2 mm is usual`: a length of the trade as this print's ruler has it, put on it as the parameter is. */
export const isUsual = (
  x: Length,
  round: Rounding,
  { grid, say }: Pick<BuildInput, 'grid' | 'say'>,
): string => `${say(onGrid(x, grid, round))} is usual`
