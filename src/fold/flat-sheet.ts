import type { Bond, Structure } from '../card/structure.ts'

/** A card taken apart so far that it lies flat. */
export interface FlatSheet {
  /** The sheet that is folded, and what can be stuck on it while all of it lies flat; its display names its own plate. */
  readonly structure: Structure
  /** The plates that hold creases together, and what is stuck on those: they come later. */
  readonly later: readonly string[]
  /** Whether plates of the sheet itself are stuck together later, such as the glue tab of a box. */
  readonly isJoined: boolean
}

/**
 * Takes the bonds out of a card that no flat sheet could have. What is stuck to one panel alone lies on it, folded or
 * not; what is stuck to two would hold the creases between them.
 */
export function flatSheetOf(structure: Structure): FlatSheet {
  const { plates, hinges, bonds, display } = structure
  const sheetOf = sheetsOf(structure)
  const plate = rootOf(structure, sheetOf)
  const flat = new Set([sheetOf.get(plate) ?? plate])
  const kept: Bond[] = []
  const sheets = [...new Set(plates.map(({ name }) => sheetOf.get(name) ?? name))]
  for (let grown = true; grown; ) {
    grown = false
    for (const sheet of sheets.filter((one) => !flat.has(one))) {
      const held = bonds.flatMap((bond): { bond: Bond; there: string }[] => {
        const [plate, onto] = [sheetOf.get(bond.plate) ?? '', sheetOf.get(bond.onto) ?? '']
        if (plate === sheet && flat.has(onto)) return [{ bond, there: bond.onto }]
        return onto === sheet && flat.has(plate) ? [{ bond, there: bond.plate }] : []
      })
      // Two panels of its own on one panel of the sheet would hold its own crease, too.
      if (held.length !== 1) continue
      flat.add(sheet)
      kept.push(...held.map(({ bond }) => bond))
      grown = true
    }
  }
  const isFlat = (name: string): boolean => flat.has(sheetOf.get(name) ?? '')
  return {
    structure: {
      ...structure,
      plates: plates.filter(({ name }) => isFlat(name)),
      hinges: hinges.filter(({ between }) => between.every(isFlat)),
      bonds: bonds.filter((bond) => kept.includes(bond)),
      stops: [],
      display: { ...display, plate },
      pads: (structure.pads ?? []).filter(({ onto }) => isFlat(onto)),
    },
    later: plates.flatMap(({ name }) => (isFlat(name) ? [] : [name])),
    isJoined: bonds.some((bond) => isFlat(bond.plate) && isFlat(bond.onto) && !kept.includes(bond)),
  }
}

/** The plate that stays put, or if its sheet has no creases, the first one of the sheet that has most. */
function rootOf({ plates, hinges, display }: Structure, sheetOf: ReadonlyMap<string, string>): string {
  const creases = (name: string): number =>
    hinges.filter(({ between: [one] }) => sheetOf.get(one) === sheetOf.get(name)).length
  if (creases(display.plate) > 0) return display.plate
  const most = Math.max(0, ...plates.map(({ name }) => creases(name)))
  return most === 0 ? display.plate : (plates.find(({ name }) => creases(name) === most)?.name ?? '')
}

/** Which plates hang together by creases: each by the name of the first of them. */
function sheetsOf({ plates, hinges }: Structure): Map<string, string> {
  const sheetOf = new Map(plates.map(({ name }) => [name, name]))
  for (const { between } of hinges) {
    const [one, other] = between.map((name) => sheetOf.get(name))
    for (const [name, sheet] of sheetOf) if (sheet === other && one !== undefined) sheetOf.set(name, one)
  }
  return sheetOf
}
