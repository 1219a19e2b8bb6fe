import type { Assembly } from './assembly.ts'
import type { Closed } from './pose.ts'

/** Creases that have bent by less than this, in radians, have not moved. */
const still = 1e-6

/**
 * How far each plate lies in front of its body's middle, in mm, when what has not moved since the card was shut lies on
 * each other as it lay then: a strip that is folded round a bar keeps the bar inside.
 *
 * @param heights of the plates as far as only their own bodies matter.
 * @param shut how far each link is bent in the shut card, in radians, and `folds` how far now.
 */
export function settled(
  { plates, links, bodies, model }: Assembly,
  heights: readonly number[],
  { isFlat, pose }: Closed,
  shut: readonly number[],
  folds: readonly number[],
): number[] {
  if (!isFlat) return [...heights]
  const groupOf = Array.from({ length: bodies }, (_, body) => body)
  const moves = (link: number): boolean => Math.abs((folds[link] ?? 0) - (shut[link] ?? 0)) > still
  for (const [i, { a, b }] of links.entries()) {
    const [kept, joined] = [groupOf[a] ?? a, groupOf[b] ?? b]
    if (!moves(i)) for (const [body, group] of groupOf.entries()) if (group === joined) groupOf[body] = kept
  }
  const laid = plates.map(({ index, over }, i) => {
    const { origin, normal } = pose.get(model.plates[index]?.name ?? '') ?? {
      origin: [0, 0, 0],
      normal: [0, 0, 1],
    }
    const up = over === (normal[2] ?? 1) > 0 ? -1 : 1
    return { z: origin[2] ?? 0, up, own: (heights[i] ?? 0) * up }
  })
  // Where a group bends against another its plates stay at the crease, and the rest of it lies round them.
  const lifts = new Map<number, number>()
  const settle = (plate: number): void => {
    const [group, at] = [groupOf[plates[plate]?.body ?? 0] ?? 0, laid[plate]]
    if (at && !lifts.has(group)) lifts.set(group, at.own - at.z)
  }
  for (const [i, { p, q }] of links.entries()) if (moves(i)) for (const plate of [p, q]) settle(plate)
  for (const plate of plates.keys()) settle(plate)
  return plates.map(({ body }, i) => {
    const group = groupOf[body] ?? body
    const { z, up } = laid[i] ?? { z: 0, up: 1 }
    const alone = groupOf.filter((g) => g === group).length === 1
    return alone ? (heights[i] ?? 0) : up * (z + (lifts.get(group) ?? 0))
  })
}
