import type { Bond, Structure } from '../../card/structure.ts'

/** What is lifted as one: the plates of one sheet, which its creases hold together. */
export interface Part {
  readonly index: number
  readonly piece: string
  readonly plates: readonly string[]
}

/** A bond from one part to another; `plate` is of `part`, `onto` of the part that carries it. */
export interface Hold {
  readonly bond: Bond
  /** Its place among the bonds: what is stuck later comes later. */
  readonly index: number
  readonly part: Part
  readonly under: Part
}

/** The sheets of a card and what is stuck on what. */
export interface Parts {
  readonly all: readonly Part[]
  readonly holds: readonly Hold[]
  readonly partOf: (plate: string) => Part | undefined
}

/** Takes a card apart into sheets. A sheet that is stuck to itself, as by a glue tab, stays one. */
export function partsOf({ plates, hinges, bonds }: Pick<Structure, 'plates' | 'hinges' | 'bonds'>): Parts {
  const first = new Map(plates.map(({ name }) => [name, name]))
  for (const { between } of hinges) {
    const [one, other] = between.map((name) => first.get(name))
    for (const [name, sheet] of first) if (sheet === other && one !== undefined) first.set(name, one)
  }
  const all = [...new Set(first.values())].map((sheet, index): Part => {
    const own = plates.filter(({ name }) => first.get(name) === sheet)
    return { index, piece: own[0]?.piece ?? '', plates: own.map(({ name }) => name) }
  })
  const byPlate = new Map(all.flatMap((part) => part.plates.map((name) => [name, part] as const)))
  const holds = bonds.flatMap((bond, index): Hold[] => {
    const [part, under] = [byPlate.get(bond.plate), byPlate.get(bond.onto)]
    return part && under && part !== under ? [{ bond, index, part, under }] : []
  })
  return { all, holds, partOf: (plate) => byPlate.get(plate) }
}

/** How a part hangs on the one nearer to the ground, the first found from there. */
export interface Support {
  readonly hold: Hold
  readonly on: Part
  /** The plate of the part itself, and the one of `on`. */
  readonly own: string
  readonly its: string
}

/** What every part hangs on, in the order in which it is reached from the grounds, which hang on nothing. */
export function supportsFrom(grounds: readonly Part[], holds: readonly Hold[]): Map<Part, Support> {
  const reached = new Set(grounds)
  const supports = new Map<Part, Support>()
  for (const on of reached)
    for (const hold of holds) {
      const below = hold.under === on
      const part = below ? hold.part : hold.under
      if ((!below && hold.part !== on) || reached.has(part)) continue
      const { plate, onto } = hold.bond
      reached.add(part)
      supports.set(part, { hold, on, own: below ? plate : onto, its: below ? onto : plate })
    }
  return supports
}
