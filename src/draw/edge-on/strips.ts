import type { Spot } from '../num.ts'
import { type DrawnBar, heightAt } from './bars.ts'
import { type Bends, type End, type Joint, keyOf } from './bends.ts'

/** Bars that creases join, as one sheet. z upwards, in mm on paper. */
export interface Strip {
  readonly plates: readonly string[]
  readonly outline: readonly Spot[]
  /** Each of its panels alone, without the bends. */
  readonly panels: readonly { readonly plate: string; readonly outline: readonly Spot[] }[]
}

/**
 * A point in the middle of a sheet, and where its surface on the left is, seen along it. Sheets are as thick upwards
 * where they slope as where they are level: so they lie on one another without a gap.
 */
interface Middle {
  readonly x: number
  readonly z: number
  readonly up: Spot
}

/** Follows every sheet from one of its ends over its creases to the other. */
export function stripsOf(bars: readonly DrawnBar[], bends: Bends): Strip[] {
  const jointAt = new Map(
    bends.joints.flatMap((joint) => joint.ends.map((end) => [keyOf(end), joint] as const)),
  )
  const left = new Set(bars.keys())
  const strips: Strip[] = []
  const isFree = (end: End): boolean => !jointAt.has(keyOf(end))
  const ends = bars.flatMap((_, bar): End[] => [
    { bar, side: -1 },
    { bar, side: 1 },
  ])
  // Rings have no free end: they are followed from anywhere.
  for (const start of [...ends.filter(isFree), ...ends]) {
    if (!left.has(start.bar)) continue
    strips.push(follow(start, bars, bends, jointAt, left))
  }
  return strips
}

function follow(
  start: End,
  bars: readonly DrawnBar[],
  bends: Bends,
  jointAt: ReadonlyMap<string, Joint>,
  left: Set<number>,
): Strip {
  const panels: Strip['panels'][number][] = []
  const middle: Middle[] = []
  let thick = 0
  for (let enter: End | undefined = start; enter && left.has(enter.bar); ) {
    const bar = bars[enter.bar]
    if (!bar) break
    left.delete(enter.bar)
    thick = Math.max(thick, bar.thick)
    const leave: End = { bar: enter.bar, side: enter.side < 0 ? 1 : -1 }
    const joint = jointAt.get(keyOf(leave))
    const own = straight(bar, enter, leave, bends, jointAt)
    panels.push({ plate: bar.plate, outline: thickened(own, bar.thick) })
    middle.push(...own)
    const next: End | undefined = joint?.ends.find((end) => keyOf(end) !== keyOf(leave))
    const other = next && bars[next.bar]
    if (joint?.folded && next && other) middle.push(...bend(bar, other, leave, bends, joint))
    enter = next
  }
  return { plates: panels.map(({ plate }) => plate), outline: thickened(middle, thick), panels }
}

/** The middle of a bar without what its bends take. */
function straight(
  bar: DrawnBar,
  enter: End,
  leave: End,
  bends: Bends,
  jointAt: ReadonlyMap<string, Joint>,
): Middle[] {
  const limit = (end: End): number => {
    const joint = jointAt.get(keyOf(end))
    return bends.reach(end) - end.side * (joint?.folded ? bends.radius(joint) + bar.thick / 2 : 0)
  }
  const [from, to] = enter.side < 0 ? [limit(enter), limit(leave)] : [limit(leave), limit(enter)]
  const inner = bar.middle.filter(([x]) => x > from + 1e-6 && x < to - 1e-6)
  const z = (x: number): number => heightAt(bar, x)
  const up = [0, -enter.side] as const
  const spots = [[from, z(from)] as const, ...inner, [to, z(to)] as const].map(([x, z]) => ({ x, z, up }))
  return enter.side < 0 ? spots : spots.reverse()
}

/** Round two corners from one bar to the next. */
function bend(bar: DrawnBar, next: DrawnBar, { side }: End, bends: Bends, joint: Joint): Middle[] {
  const radius = bends.radius(joint)
  const out = bends.reach(joint.ends[0]) - side * (bar.thick / 2)
  const at = (one: DrawnBar): number => one.middle.at(side < 0 ? 0 : -1)?.[1] ?? 0
  const [from, to] = [at(bar), at(next)]
  const way = Math.sign(to - from)
  return [
    ...angles.map(([sin, cos]) => ({
      x: out - side * radius * (1 - sin),
      z: from + way * radius * (1 - cos),
      up: [-way * sin, side * cos] as const,
    })),
    ...angles.map(([sin, cos]) => ({
      x: out - side * radius * (1 - cos),
      z: to - way * radius * (1 - sin),
      up: [-way * cos, -side * sin] as const,
    })),
  ]
}

/** Sines and cosines of a quarter turn. */
const angles = Array.from({ length: 9 }, (_, i) => {
  const angle = (i / 8) * (Math.PI / 2)
  return [Math.sin(angle), Math.cos(angle)] as const
})

/** The outline of a sheet of which this is the middle. */
function thickened(middle: readonly Middle[], thick: number): Spot[] {
  const spots = middle.filter(({ x, z }, i) => {
    const last = middle[i - 1]
    return !last || Math.hypot(x - last.x, z - last.z) > 1e-6
  })
  const side = (way: number): Spot[] =>
    spots.map(({ x, z, up }): Spot => [x + (way * up[0] * thick) / 2, z + (way * up[1] * thick) / 2])
  return [...side(1), ...side(-1).reverse()]
}
