import type { Spot } from '../num.ts'
import type { Heights } from './heights.ts'
import type { Column, Cut } from './section.ts'

/** How a cut is drawn: mm on paper for one mm along it, and for one mm of thickness. */
export interface Scales {
  readonly along: number
  readonly thick: number
}

/** A bar as it is drawn: the middle of its sheet from left to right, z upwards from the table. In mm on paper. */
export interface DrawnBar {
  readonly plate: string
  readonly thick: number
  readonly middle: readonly Spot[]
}

/** How long the slope is on which a sheet comes down from what it lies on, in mm on paper. */
const slope = 3

/** Bars before their creases are rounded: level, or sloping where they must give way. */
export function drawnBars({ bars, columns }: Cut, heights: Heights, { along, thick }: Scales): DrawnBar[] {
  return bars.map(({ plate, caliper, from, to }) => {
    const own = columns.flatMap((column, i) => {
      const z = heights.get(plate)?.[i]
      const inside = column.from > from - 1e-3 && column.to < to + 1e-3
      return z !== undefined && inside ? [{ column, z: z * thick }] : []
    })
    return { plate, thick: caliper * thick, middle: profile(own, along) }
  })
}

/** Falls begin, and rises end, at the edge that they are about, so that no sheet cuts a corner of what it lies on. */
function profile(own: readonly { column: Column; z: number }[], along: number): Spot[] {
  const spots: Spot[] = []
  for (const [i, { column, z }] of own.entries()) {
    const [before, after] = [own[i - 1]?.z ?? z, own[i + 1]?.z ?? z]
    const [from, to] = [column.from * along, column.to * along]
    const run = Math.min(slope, (to - from) / 2)
    spots.push([before > z + 1e-9 ? from + run : from, z], [after > z + 1e-9 ? to - run : to, z])
  }
  return spots.filter((spot, i) => {
    const [last, next] = [spots[i - 1], spots[i + 1]]
    // What is in the middle of a level stretch says nothing.
    return !last || !next || last[1] !== spot[1] || next[1] !== spot[1]
  })
}

/** Where the middle of a bar is at this place along the paper. */
export function heightAt({ middle }: Pick<DrawnBar, 'middle'>, x: number): number {
  for (const [i, [x1, z1]] of middle.entries()) {
    const [x0, z0] = middle[i - 1] ?? [x1, z1]
    if (x <= x1) return x1 === x0 || x < x0 ? z1 : z0 + ((x - x0) / (x1 - x0)) * (z1 - z0)
  }
  return middle.at(-1)?.[1] ?? 0
}
