import type { Unit } from '../length/length.ts'
import type { Kit, KitSupply } from './kit.ts'
import type { KitLetters, KitPiece } from './kit-pieces.ts'
import { type LengthJson, lengthJson, type SizeJson, sizeJson } from './length-json.ts'
import type { Quantity } from './needs.ts'

type QuantityJson = { count: number } | { length: LengthJson } | { text: string }
type PieceJson = { item: string; card?: string; count: number; size: SizeJson }
export type SupplyJson = { item: string; rule?: string } & QuantityJson
export type EachJson =
  | (PieceJson & { kind: 'piece'; stock: string })
  | { item: string; kind: 'letters'; card?: string; count: number; letters: string }
  | (SupplyJson & { kind: 'count' | 'length' | 'text' })

/** What `kit --json` answers. Prices and pack sizes are known from a class file only, so there are none here. */
export interface KitJson {
  readonly lesson: string
  readonly people: number
  readonly spare: number
  readonly each: readonly EachJson[]
  readonly shared: readonly SupplyJson[]
  readonly tutor: readonly SupplyJson[]
  readonly stocks: readonly { stock: string; pieces: readonly PieceJson[] }[]
  readonly buy: readonly { item: string; need: number | LengthJson | string }[]
}

/** A kit list for other programs. */
export function kitJson(kit: Kit): KitJson {
  const { unit } = kit
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
  ...(rule !== undefined && { rule }),
})

function quantityJson(amount: Quantity, unit: Unit): QuantityJson {
  if (amount.kind === 'count') return { count: amount.count }
  if (amount.kind === 'length') return { length: lengthJson(amount.length, unit) }
  return { text: amount.text }
}

export function needJson(need: Quantity, unit: Unit): number | LengthJson | string {
  if (need.kind === 'count') return need.count
  return need.kind === 'length' ? lengthJson(need.length, unit) : need.text
}
