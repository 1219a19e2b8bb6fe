import type { Grid } from './grid.ts'
import type { Table } from './most-value.ts'

/**
 * For every size of the grid, the most value that can still be cut from the rest of the sheet when a box of that size
 * is cut from it too: the estimate of the best-first searches (K. V. Viswanathan and A. Bagchi, Best-first search
 * methods for constrained two-dimensional cutting stock problems, Oper. Res. 41 (1993) 768–776; V.-D. Cung, M. Hifi and
 * B. Le Cun, Constrained two-dimensional cutting stock problems, Int. Trans. Oper. Res. 7 (2000) 185–210).
 */
export function outsideValue({ across, up }: Grid, { best }: Table): Float64Array {
  const [nx, ny] = [across.sizes.length, up.sizes.length]
  const outside = new Float64Array(nx * ny)
  const beside = sums(across.sizes)
  const above = sums(up.sizes)
  for (let i = nx - 1; i >= 0; i--)
    for (let j = ny - 1; j >= 0; j--) {
      let most = 0
      // In a larger slot than it needs.
      if (i + 1 < nx) most = Math.max(most, outside[(i + 1) * ny + j] as number)
      if (j + 1 < ny) most = Math.max(most, outside[i * ny + j + 1] as number)
      for (let k = 0; k < nx; k++) {
        const both = beside[i * nx + k] as number
        if (both < 0) break
        most = Math.max(most, (best[k * ny + j] as number) + (outside[both * ny + j] as number))
      }
      for (let k = 0; k < ny; k++) {
        const both = above[j * ny + k] as number
        if (both < 0) break
        most = Math.max(most, (best[i * ny + k] as number) + (outside[i * ny + both] as number))
      }
      outside[i * ny + j] = most
    }
  return outside
}

/** For two sizes the smallest one that holds both side by side; -1 when none does. */
function sums(sizes: readonly number[]): Int32Array {
  const n = sizes.length
  const both = new Int32Array(n * n).fill(-1)
  for (let i = 0; i < n; i++) {
    let at = i
    for (let k = 0; k < n; k++) {
      while (at < n && (sizes[at] as number) < (sizes[i] as number) + (sizes[k] as number)) at++
      if (at === n) break
      both[i * n + k] = at
    }
  }
  return both
}
