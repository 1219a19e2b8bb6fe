/** Equations at one point: what each should be zero of, and its derivatives by the unknowns. */
export interface Linearised {
  readonly residual: readonly number[]
  readonly jacobian: readonly (readonly number[])[]
}

/**
 * Solves equations near a first guess by the Levenberg–Marquardt method. Where equations leave unknowns free, the
 * solution stays close to the guess.
 *
 * @returns undefined when it does not get every residual below `tolerance`.
 */
export function settle(
  equations: (x: readonly number[]) => Linearised,
  guess: readonly number[],
  tolerance = 1e-11,
): number[] | undefined {
  let x = [...guess]
  let here = equations(x)
  let damping = 1e-6
  for (let round = 0; round < 80; round++) {
    if (here.residual.every((r) => Math.abs(r) < tolerance)) return x
    const step = solveDamped(here, damping)
    const next = x.map((xi, i) => xi - (step[i] ?? 0))
    const there = equations(next)
    if (sumOfSquares(there.residual) < sumOfSquares(here.residual)) {
      x = next
      here = there
      damping = Math.max(damping / 16, 1e-15)
    } else {
      damping *= 8
      if (damping > 1e6) return undefined
    }
  }
  return undefined
}

const sumOfSquares = (r: readonly number[]): number => r.reduce((sum, x) => sum + x * x, 0)

/** Solves (JᵀJ + damping·1) step = Jᵀr by Cholesky's decomposition. */
function solveDamped({ residual, jacobian }: Linearised, damping: number): number[] {
  const n = jacobian[0]?.length ?? 0
  const lower: number[][] = []
  const right = Array.from({ length: n }, (_, i) =>
    residual.reduce((sum, r, row) => sum + r * (jacobian[row]?.[i] ?? 0), 0),
  )
  for (let i = 0; i < n; i++) {
    const own: number[] = []
    for (let j = 0; j <= i; j++) {
      let sum = i === j ? damping : 0
      for (const row of jacobian) sum += (row[i] ?? 0) * (row[j] ?? 0)
      for (let k = 0; k < j; k++) sum -= (own[k] ?? 0) * ((i === j ? own : lower[j])?.[k] ?? 0)
      own.push(i === j ? Math.sqrt(Math.max(sum, 1e-300)) : sum / (lower[j]?.[j] ?? 1))
    }
    lower.push(own)
  }
  for (let i = 0; i < n; i++) {
    for (let k = 0; k < i; k++) right[i] = (right[i] ?? 0) - (lower[i]?.[k] ?? 0) * (right[k] ?? 0)
    right[i] = (right[i] ?? 0) / (lower[i]?.[i] ?? 1)
  }
  for (let i = n - 1; i >= 0; i--) {
    for (let k = i + 1; k < n; k++) right[i] = (right[i] ?? 0) - (lower[k]?.[i] ?? 0) * (right[k] ?? 0)
    right[i] = (right[i] ?? 0) / (lower[i]?.[i] ?? 1)
  }
  return right
}

/** How many rows are independent, by elimination with full pivoting. `tolerance` is against the largest entry. */
export function rankOf(matrix: readonly (readonly number[])[], tolerance = 1e-7): number {
  const rows = matrix.map((row) => [...row])
  const least = tolerance * Math.max(0, ...rows.flat().map(Math.abs))
  let rank = 0
  for (;;) {
    let best = { size: least, row: -1, column: -1 }
    for (const [i, row] of rows.entries())
      for (const [j, x] of row.entries())
        if (i >= rank && Math.abs(x) > best.size) best = { size: Math.abs(x), row: i, column: j }
    const pivot = rows[best.row]
    if (!pivot) return rank
    rows[best.row] = rows[rank] ?? pivot
    rows[rank] = pivot
    for (const row of rows.slice(rank + 1)) {
      const factor = (row[best.column] ?? 0) / (pivot[best.column] ?? 1)
      for (const [j, x] of pivot.entries()) row[j] = (row[j] ?? 0) - factor * x
    }
    rank++
  }
}
