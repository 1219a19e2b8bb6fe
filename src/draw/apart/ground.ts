import type { Structure } from '../../card/structure.ts'
import type { Pose } from '../../fold/pose.ts'
import { sum } from '../../fold/space.ts'
import { type Part, type Parts, supportsFrom } from './parts.ts'

/** What everything hangs on, and first sheets of what hangs on nothing of it, such as a lid. */
export function groundsOf({ display }: Structure, { all, holds, partOf }: Parts): Part[] {
  const climb = (start: Part): Part => {
    const seen = new Set<Part>()
    let part = start
    for (;;) {
      seen.add(part)
      const under = holds.find((hold) => hold.part === part && !seen.has(hold.under))?.under
      if (!under) return part
      part = under
    }
  }
  const first = partOf(display.plate) ?? all[0]
  if (!first) return []
  const grounds = [climb(first)]
  for (const part of all) {
    const reached = supportsFrom(grounds, holds)
    if (!grounds.includes(part) && !reached.has(part)) grounds.push(climb(part))
  }
  return grounds
}

/** Further grounds over the middle of the first. */
export function centred(
  pose: Pose,
  grounds: readonly Part[],
  { plates: all }: Structure,
  { holds }: Parts,
): Pose {
  const middle = (plates: readonly string[]): readonly [number, number] => {
    const points = all
      .filter(({ name }) => plates.includes(name))
      .flatMap(({ outline }) => outline.map(({ x, y }) => [x.valueOf(), y.valueOf()] as const))
    const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)]
    return [(Math.min(...xs) + Math.max(...xs)) / 2, (Math.min(...ys) + Math.max(...ys)) / 2]
  }
  const [first, ...others] = grounds
  const [x, y] = middle(first?.plates ?? [])
  const moved = new Map(pose)
  for (const ground of others) {
    const [u, v] = middle(ground.plates)
    const members = [ground, ...supportsFrom([ground], holds).keys()].flatMap(({ plates }) => plates)
    for (const name of members) {
      const at = pose.get(name)
      if (at) moved.set(name, { ...at, origin: sum(at.origin, [x - u, 0, v - y]) })
    }
  }
  return moved
}
