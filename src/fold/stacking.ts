import type { Assembly } from './assembly.ts'
import { groupsIn } from './layout.ts'
import { slicesOf } from './slices.ts'

/**
 * How far each plate lies in front of its body's middle, in mm: the middle of the sheet that carries the
 * creases is at 0, and what is stuck on lies on it with its caliper and foam.
 */
export function stackingOf(assembly: Assembly): number[] {
  const { plates, model, links } = assembly
  const thin = (n: number): number => n / Number(model.thinPerMm)
  const half = (i: number): number => thin(model.plates[plates[i]?.index ?? 0]?.caliper ?? 0) / 2
  const numbers = new Map(plates.map(({ index }, i) => [index, i]))
  const bonds = model.bonds.flatMap(({ plate, onto, front, height }) => {
    const [i, j] = [numbers.get(plate), numbers.get(onto)]
    if (i === undefined || j === undefined) return []
    const gap = half(i) + half(j) + thin(height)
    return [{ i, j, by: front !== plates[j]?.over ? gap : -gap }]
  })
  const heights = new Map<number, number>()
  const spread = (start: number): void => {
    if (heights.has(start)) return
    heights.set(start, 0)
    for (let grown = true; grown; ) {
      grown = false
      for (const { i, j, by } of bonds) {
        const [at, to] = [heights.get(i), heights.get(j)]
        if (at === undefined && to !== undefined) heights.set(i, to + by)
        else if (to === undefined && at !== undefined) heights.set(j, at - by)
        else continue
        grown = true
      }
    }
  }
  for (const { p, q } of links) for (const i of [p, q]) if (!isReached(heights, plates, i)) spread(i)
  for (const i of plates.keys()) spread(i)
  const touch = touching(assembly)
  const byLevel = [...plates.keys()].sort((i, j) => (plates[i]?.level ?? 0) - (plates[j]?.level ?? 0))
  for (const side of [1, -1]) {
    const outwards = (side > 0 ? byLevel : [...byLevel].reverse()).filter(
      (i) => side * (heights.get(i) ?? 0) >= 0,
    )
    for (const [n, i] of outwards.entries())
      for (const j of outwards.slice(0, n))
        if (touch(i, j) && side * (heights.get(i) ?? 0) > 0) {
          const least = side * (heights.get(j) ?? 0) + half(i) + half(j)
          heights.set(i, side * Math.max(side * (heights.get(i) ?? 0), least))
        }
  }
  return plates.map((_, i) => heights.get(i) ?? 0)
}

/** Whether two plates of one body lie on each other. */
function touching({ bodies, plates }: Assembly): (i: number, j: number) => boolean {
  const groups = Array.from({ length: bodies }, (_, body) =>
    groupsIn(
      slicesOf(
        plates.map((plate) => (plate.body === body ? plate.rings : [])),
        [],
      ),
    ),
  )
  return (i, j) =>
    (groups[plates[i]?.body ?? -1] ?? []).some((shapes) => shapes.includes(i) && shapes.includes(j))
}

/** Whether some plate of the same body has a height already: bonds then give the others theirs. */
const isReached = (
  heights: Map<number, number>,
  plates: readonly { readonly body: number }[],
  i: number,
): boolean => [...heights.keys()].some((j) => plates[j]?.body === plates[i]?.body)
