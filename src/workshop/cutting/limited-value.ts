import { choice } from './choice.ts'
import type { Grid } from './grid.ts'
import type { Table } from './most-value.ts'

/**
 * Much value out of a sheet with no more of each piece than are wanted: the dynamic programme of `mostValue`, in which
 * each size keeps the one best selection found for it, and pieces above their number count nothing. Quick, and not
 * always the best there is, because a size may be worth less now and more later.
 *
 * @returns a table whose boxes may hold surplus pieces; see `atMost`.
 */
export function limitedValue(
  { across, up, ways }: Grid,
  values: readonly number[],
  limits: readonly number[],
): Table {
  const [nx, ny, kinds] = [across.sizes.length, up.sizes.length, values.length]
  const best = new Float64Array(nx * ny)
  const choices = new Int32Array(nx * ny).fill(choice.nothing)
  const held = new Uint16Array(nx * ny * kinds)
  const take = (at: number, from: number, chosen: number): void => {
    if ((best[from] as number) <= (best[at] as number)) return
    best[at] = best[from] as number
    choices[at] = chosen
    held.copyWithin(at * kinds, from * kinds, (from + 1) * kinds)
  }
  /** Both together, if that is better than what there is. */
  const join = (at: number, a: number, b: number, chosen: number): void => {
    const value = sum(held, a * kinds, b * kinds, values, limits)
    if (value <= (best[at] as number)) return
    best[at] = value
    choices[at] = chosen
    for (let kind = 0; kind < kinds; kind++)
      held[at * kinds + kind] = Math.min(
        (held[a * kinds + kind] as number) + (held[b * kinds + kind] as number),
        limits[kind] as number,
      )
  }
  for (const [n, { way, i, j }] of ways.entries()) {
    const at = i * ny + j
    const value = values[way.kind] as number
    if ((limits[way.kind] ?? 0) < 1 || value <= (best[at] as number)) continue
    best[at] = value
    choices[at] = choice.way(n)
    held.fill(0, at * kinds, (at + 1) * kinds)
    held[at * kinds + way.kind] = 1
  }
  for (let i = 0; i < nx; i++)
    for (let j = 0; j < ny; j++) {
      const at = i * ny + j
      if (i > 0) take(at, at - ny, choice.narrower)
      if (j > 0) take(at, at - 1, choice.lower)
      for (let k = 0; k < (across.halves[i] as number); k++) {
        const [a, b] = [k * ny + j, (across.rest[i * nx + k] as number) * ny + j]
        if ((best[a] as number) + (best[b] as number) > (best[at] as number)) join(at, a, b, choice.beside(k))
      }
      for (let k = 0; k < (up.halves[j] as number); k++) {
        const [a, b] = [i * ny + k, i * ny + (up.rest[j * ny + k] as number)]
        if ((best[a] as number) + (best[b] as number) > (best[at] as number)) join(at, a, b, choice.above(k))
      }
    }
  return { best, choices }
}

/** What two selections are worth together, without the pieces above their number. */
function sum(
  held: Uint16Array,
  a: number,
  b: number,
  values: readonly number[],
  limits: readonly number[],
): number {
  let value = 0
  for (let kind = 0; kind < values.length; kind++) {
    const both = (held[a + kind] as number) + (held[b + kind] as number)
    value += (values[kind] as number) * Math.min(both, limits[kind] as number)
  }
  return value
}
