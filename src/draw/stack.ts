import type { Structure } from '../card/structure.ts'

/** Where a plate lies among those that are stuck together, counted away from the face of the one at the bottom. */
export interface Level {
  /** The plate that carries the others. */
  readonly root: string
  readonly level: number
  /** Whether it looks the same way as the root. */
  readonly sameWay: boolean
  /** The same for all plates that bonds hold together. */
  readonly stack: number
}

/** What lies on what, from the bonds alone: layers of paper are thinner than any comparison of depths could trust. */
export function levelsOf({ plates, bonds }: Pick<Structure, 'plates' | 'bonds'>): Map<string, Level> {
  const stackOf = new Map(plates.map((plate, i) => [plate.name, i]))
  for (const { plate, onto } of bonds) {
    const [from, to] = [stackOf.get(plate), stackOf.get(onto)]
    for (const [name, stack] of stackOf) if (stack === from && to !== undefined) stackOf.set(name, to)
  }
  const carried = new Set(bonds.map((b) => b.plate))
  const levels = new Map<string, Level>()
  const stack = (name: string) => stackOf.get(name) ?? -1
  for (const { name } of plates)
    if (!carried.has(name)) levels.set(name, { root: name, level: 0, sameWay: true, stack: stack(name) })
  for (let found = true; found; ) {
    found = false
    for (const [i, { plate, onto, side, over }] of bonds.entries()) {
      const below = levels.get(onto)
      if (!below || levels.has(plate)) continue
      const outwards = (side === 'face') === below.sameWay ? 1 : -1
      // Of two on one plate, the one stuck on later lies on the other.
      const level = below.level + outwards * (1 + i / 1000)
      levels.set(plate, { root: below.root, level, sameWay: below.sameWay !== over, stack: stack(plate) })
      found = true
    }
  }
  return levels
}
