import { choice } from './choice.ts'
import type { Grid } from './grid.ts'

/** For every size of the grid, the most value that pieces fill it with, and how. */
export interface Table {
  readonly best: Float64Array
  readonly choices: Int32Array
}

/**
 * The most value that comes out of a sheet, and out of every smaller size of its grid, with any number of each piece:
 * the unlimited guillotine knapsack by dynamic programming (P. C. Gilmore and R. E. Gomory, The theory and computation
 * of knapsack functions, Oper. Res. 14 (1966) 1045–1074; J. E. Beasley, Algorithms for unconstrained two-dimensional
 * guillotine cutting, J. Oper. Res. Soc. 36 (1985) 297–306).
 *
 * @param values of one of each kind: whole numbers, so that the sums are exact.
 */
export function mostValue({ across, up, ways }: Grid, values: readonly number[]): Table {
  const [nx, ny] = [across.sizes.length, up.sizes.length]
  const best = new Float64Array(nx * ny)
  const choices = new Int32Array(nx * ny).fill(choice.nothing)
  const offer = (at: number, value: number, chosen: number): void => {
    if (value > (best[at] as number)) {
      best[at] = value
      choices[at] = chosen
    }
  }
  for (const [n, { way, i, j }] of ways.entries())
    offer(i * ny + j, values[way.kind] as number, choice.way(n))
  for (let i = 0; i < nx; i++) {
    const row = i * ny
    if (i > 0) for (let j = 0; j < ny; j++) offer(row + j, best[row - ny + j] as number, choice.narrower)
    for (let k = 0; k < (across.halves[i] as number); k++) {
      const [a, b] = [k * ny, (across.rest[i * nx + k] as number) * ny]
      for (let j = 0; j < ny; j++) {
        const value = (best[a + j] as number) + (best[b + j] as number)
        if (value > (best[row + j] as number)) {
          best[row + j] = value
          choices[row + j] = choice.beside(k)
        }
      }
    }
    for (let j = 0; j < ny; j++) {
      if (j > 0) offer(row + j, best[row + j - 1] as number, choice.lower)
      for (let k = 0; k < (up.halves[j] as number); k++) {
        const value = (best[row + k] as number) + (best[row + (up.rest[j * ny + k] as number)] as number)
        if (value > (best[row + j] as number)) {
          best[row + j] = value
          choices[row + j] = choice.above(k)
        }
      }
    }
  }
  return { best, choices }
}
