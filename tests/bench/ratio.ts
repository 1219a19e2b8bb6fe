/** One line of the table: how long we take, how long the least thing that could do it takes, both in this run. */
export interface Ratio {
  readonly what: string
  /** What it is held against. */
  readonly against: string
  /** Both in the same unit, which is milliseconds unless said. */
  readonly ours: number
  readonly floor: number
  readonly unit?: 's' | 'MB'
  /** What `ours / floor` is to be. */
  readonly goal?: { readonly atMost: number } | { readonly atLeast: number }
  readonly runs: number
}

/**
 * Times two things in turn, so that whatever else the machine does falls on both.
 *
 * @returns the median of each, in milliseconds.
 */
export async function inTurn(
  runs: number,
  ours: () => unknown,
  floor: () => unknown,
): Promise<{ ours: number; floor: number; runs: number }> {
  const times: [number[], number[]] = [[], []]
  // The first round warms caches up and is not counted.
  for (let round = 0; round <= runs; round++)
    for (const [i, run] of [ours, floor].entries()) {
      const start = performance.now()
      await run()
      if (round > 0) times[i]?.push(performance.now() - start)
    }
  return { ours: median(times[0]), floor: median(times[1]), runs }
}

export function median(values: readonly number[]): number {
  const sorted = values.toSorted((a, b) => a - b)
  const middle = Math.floor(sorted.length / 2)
  const [low = Number.NaN, high = Number.NaN] = [sorted[Math.ceil(sorted.length / 2) - 1], sorted[middle]]
  return (low + high) / 2
}
