import { choice } from './choice.ts'
import type { Grid } from './grid.ts'
import { mostValue, type Table } from './most-value.ts'

/**
 * Much value out of a sheet with no more of each piece than are wanted: the dynamic programme of `mostValue`, in which
 * each size keeps the one best selection found for it, and pieces above their number count nothing. Quick, and not
 * always the best there is, because a size may be worth less now and more later.
 *
 * @returns a table whose boxes may hold surplus pieces; see `atMost`.
 */
export function limitedValue(grid: Grid, values: readonly number[], limits: readonly number[]): Table {
  const { across, up, ways } = grid
  const scarce = scarceKinds(grid, limits)
  const some = values.map((value, kind) => ((limits[kind] ?? 0) > 0 ? value : 0))
  if (scarce.length === 0) return mostValue(grid, some)
  const [nx, ny, kinds] = [across.sizes.length, up.sizes.length, scarce.length]
  const most = scarce.map((kind) => limits[kind] ?? 0)
  const each = scarce.map((kind) => values[kind] ?? 0)
  const best = new Float64Array(nx * ny)
  const choices = new Int32Array(nx * ny).fill(choice.nothing)
  const held = new Uint16Array(nx * ny * kinds)
  /** Which scarce kinds are in a size, a bit each; those beyond a word share bits. */
  const bits = new Int32Array(nx * ny)

  const take = (at: number, from: number, chosen: number): void => {
    if ((best[from] as number) <= (best[at] as number)) return
    best[at] = best[from] as number
    bits[at] = bits[from] as number
    choices[at] = chosen
    held.copyWithin(at * kinds, from * kinds, (from + 1) * kinds)
  }
  /** Both together, if that is better than what there is even without the pieces above their number. */
  const join = (at: number, a: number, b: number, chosen: number): void => {
    let value = (best[a] as number) + (best[b] as number)
    if (((bits[a] as number) & (bits[b] as number)) !== 0)
      for (let n = 0; n < kinds; n++) {
        const over = (held[a * kinds + n] as number) + (held[b * kinds + n] as number) - (most[n] as number)
        if (over > 0) value -= over * (each[n] as number)
      }
    if (value <= (best[at] as number)) return
    best[at] = value
    bits[at] = (bits[a] as number) | (bits[b] as number)
    choices[at] = chosen
    for (let n = 0; n < kinds; n++) {
      const both = (held[a * kinds + n] as number) + (held[b * kinds + n] as number)
      held[at * kinds + n] = Math.min(both, most[n] as number)
    }
  }
  for (const [n, { way, i, j }] of ways.entries()) {
    const at = i * ny + j
    const value = some[way.kind] as number
    if (value <= (best[at] as number)) continue
    best[at] = value
    choices[at] = choice.way(n)
    held.fill(0, at * kinds, (at + 1) * kinds)
    const kind = scarce.indexOf(way.kind)
    bits[at] = kind < 0 ? 0 : 1 << (kind % 31)
    if (kind >= 0) held[at * kinds + kind] = 1
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

/** Steps that filling the table takes. */
export const limitedWork = (grid: Grid, limits: readonly number[]): number => {
  const scarce = scarceKinds(grid, limits).length
  return grid.work * (scarce === 0 ? 1 : 4 + scarce)
}

/** The kinds of which a sheet could hold more than are wanted, by their paper. */
function scarceKinds({ across, up, ways }: Grid, limits: readonly number[]): number[] {
  const width = ((across.sizes.at(-1) ?? 0) + 1) * across.steps.marks
  const height = ((up.sizes.at(-1) ?? 0) + 1) * up.steps.marks
  const paper = new Map(ways.map(({ way }) => [way.kind, way.width * way.height]))
  return [...paper]
    .filter(
      ([kind, area]) => (limits[kind] ?? 0) > 0 && (limits[kind] ?? 0) < Math.floor((width * height) / area),
    )
    .map(([kind]) => kind)
}
