import { type Finding, nearestWord, type Place } from '../../length/finding.ts'
import { type Purchase, totalOf } from './buying.ts'
import type { Money } from './money.ts'

/** A part of the shop, as the teacher calls it, and what is to be had there. */
export interface ShopGroup {
  readonly name: string
  readonly items: readonly { readonly item: string; readonly place: Place }[]
}

/** What is bought in one part of the shop. */
export interface ShoppingGroup {
  /** Undefined where the class file names no parts at all. */
  readonly name?: string
  readonly lines: readonly Purchase[]
  readonly total: Money
}

/** What is to be had nowhere that the class file names. */
export const theRest = 'the rest'

/** A shopping list in the order of the shop; what it names nowhere is the rest, at the end. Empty parts are left out. */
export function shoppingGroups(buy: readonly Purchase[], shop: readonly ShopGroup[]): ShoppingGroup[] {
  if (shop.length === 0) return [{ lines: buy, total: totalOf(buy) }]
  const where = new Map<string, string>()
  // What stands twice is bought where it stands first.
  for (const { name, items } of shop)
    for (const { item } of items) if (!where.has(item)) where.set(item, name)
  const names = [...new Set([...shop.map(({ name }) => name), theRest])]
  return names
    .map((name) => {
      const lines = buy.filter(({ item }) => (where.get(item) ?? theRest) === name)
      return { name, lines, total: totalOf(lines) }
    })
    .filter(({ lines }) => lines.length > 0)
}

/** Names in the shop that nothing on the list has, and names that stand in it twice. */
export function shopFindings(shop: readonly ShopGroup[], buy: readonly Purchase[]): Finding[] {
  const bought = [...new Set(buy.map(({ item }) => item))]
  const seen = new Map<string, string>()
  return shop.flatMap(({ name, items }) =>
    items.flatMap(({ item, place }): Finding[] => {
      const before = seen.get(item)
      seen.set(item, before ?? name)
      if (before !== undefined)
        return [
          hint(
            'shop-twice',
            `\`${item}\` stands in \`${before}\` already`,
            'Take it out of one of them',
            place,
          ),
        ]
      if (bought.includes(item)) return []
      const near = nearestWord(item, bought)
      return [
        hint(
          'not-bought',
          `Nothing of \`${item}\` is needed for this class`,
          near === undefined ? 'Take it out, or leave it for another class' : `Write \`${near}\``,
          place,
        ),
      ]
    }),
  )
}

const hint = (rule: string, message: string, suggestion: string, place: Place): Finding => ({
  rule,
  severity: 'hint',
  message,
  suggestion,
  place,
})
