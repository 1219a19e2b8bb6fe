import { type Area, areaNumber, formatArea } from '../length/area.ts'
import type { Unit } from '../length/length.ts'
import type { Dose } from '../lesson/dose.ts'
import type { Kit } from './kit.ts'
import type { KitLetters, KitPiece } from './kit-pieces.ts'
import { ruleNotation } from './kit-rule.ts'
import type { KitSupply } from './kit-supply.ts'
import { type LengthJson, lengthJson, type SizeJson, sizeJson } from './length-json.ts'
import type { Quantity } from './needs.ts'

/** An area in both units with its text, and a dose as it is weighed or poured. */
export type AreaJson = { cm2: number; sqIn: number; text: string }
export type DoseJson = { g: number } | { ml: number }
export type NeedJson = number | LengthJson | AreaJson | DoseJson | string
type QuantityJson =
  | { count: number; of?: string }
  | { length: LengthJson }
  | { area: AreaJson }
  | { dose: DoseJson }
  | { text: string }
type PieceJson = { item: string; card?: string; count: number; size: SizeJson }
export type SupplyJson = { item: string; rule?: string } & QuantityJson
export type EachJson =
  | (PieceJson & { kind: 'piece'; stock: string })
  | { item: string; kind: 'letters'; card?: string; count: number; letters: string }
  | (SupplyJson & { kind: Quantity['kind'] })

/** What `kit --json` answers. Prices and pack sizes are known from a class file only, so there are none here. */
export interface KitJson {
  readonly lesson: string
  readonly people: number
  readonly spare: number
  readonly each: readonly EachJson[]
  readonly shared: readonly SupplyJson[]
  readonly tutor: readonly SupplyJson[]
  readonly stocks: readonly { stock: string; pieces: readonly PieceJson[] }[]
  readonly buy: readonly { item: string; need: NeedJson }[]
}

/** A kit list for other programs. */
export function kitJson(kit: Kit): KitJson {
  const { unit } = kit.wording
  return {
    lesson: kit.lesson,
    people: kit.people,
    spare: kit.spare,
    each: kit.each.map((entry) => eachJson(entry, unit)),
    shared: kit.shared.map((s) => supplyJson(s, unit)),
    tutor: kit.tutor.map((s) => supplyJson(s, unit)),
    stocks: kit.stocks.map(({ stock, pieces }) => ({
      stock,
      pieces: pieces.map((p) => ({
        item: p.item,
        ...(p.card !== undefined && { card: p.card }),
        count: p.count,
        size: sizeJson(p.size, unit),
      })),
    })),
    buy: kit.buy.map(({ item, need }) => ({ item, need: needJson(need, unit) })),
  }
}

export function eachJson(entry: KitPiece | KitLetters | KitSupply, unit: Unit): EachJson {
  if (entry.kind === 'piece') return { ...entry, size: sizeJson(entry.size, unit) }
  if (entry.kind === 'letters') return entry
  return { kind: entry.amount.kind, ...supplyJson(entry, unit) }
}

export const supplyJson = ({ item, amount, rule }: KitSupply, unit: Unit): SupplyJson => ({
  item,
  ...quantityJson(amount, unit),
  ...(rule && { rule: ruleNotation(rule) }),
})

function quantityJson(amount: Quantity, unit: Unit): QuantityJson {
  switch (amount.kind) {
    case 'count':
      return { count: amount.count, ...(amount.of !== undefined && { of: amount.of }) }
    case 'length':
      return { length: lengthJson(amount.length, unit) }
    case 'area':
      return { area: areaJson(amount.area, unit) }
    case 'dose':
      return { dose: doseJson(amount.dose) }
    case 'text':
      return { text: amount.text }
  }
}

/** How much is needed, without the word of its kind. */
export function needJson(need: Quantity, unit: Unit): NeedJson {
  if (need.kind === 'count') return need.count
  if (need.kind === 'length') return lengthJson(need.length, unit)
  if (need.kind === 'area') return areaJson(need.area, unit)
  return need.kind === 'dose' ? doseJson(need.dose) : need.text
}

const areaJson = (area: Area, unit: Unit): AreaJson => ({
  cm2: areaNumber(area, 'mm'),
  sqIn: areaNumber(area, 'in'),
  text: formatArea(area, unit),
})

const doseJson = ({ unit, amount }: Dose): DoseJson =>
  unit === 'g' ? { g: amount.valueOf() } : { ml: amount.valueOf() }
