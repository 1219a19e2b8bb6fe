import { areaOf } from '../../length/area.ts'
import { formatLength, formatSize } from '../../length/format.ts'
import type { Length, Size, Unit } from '../../length/length.ts'
import { say } from '../kit-listing.ts'
import type { Quantity } from '../needs.ts'

/** What something is sold in that is weighed, poured or counted in drops. */
export const containers = ['bottle', 'tube', 'pot', 'can', 'stick'] as const

/** How a supply is sold, and how much that is. */
export type Sold =
  | { readonly kind: 'roll'; readonly length: Length }
  | { readonly kind: 'pack'; readonly count: number }
  | { readonly kind: 'sheet'; readonly size: Size }
  | { readonly kind: 'container'; readonly container: (typeof containers)[number]; readonly holds: Quantity }

/** How much is in one of what is sold. */
export function quantityIn(sold: Sold): Quantity {
  switch (sold.kind) {
    case 'roll':
      return { kind: 'length', length: sold.length }
    case 'pack':
      return { kind: 'count', count: sold.count }
    case 'sheet':
      return { kind: 'area', area: areaOf(sold.size) }
    case 'container':
      return sold.holds
  }
}

/** `roll of 10 m`, `pack of 100`, `sheet of 8 × 12 in`, `bottle of 120 ml`: as the shop says them. */
export function soldText(sold: Sold, unit: Unit): string {
  switch (sold.kind) {
    case 'roll':
      return `roll of ${rollText(sold.length, unit)}`
    case 'pack':
      return `pack of ${sold.count}`
    case 'sheet':
      return `sheet of ${formatSize(sold.size, unit)}`
    case 'container':
      return `${sold.container} of ${thereText(sold.holds, unit)}`
  }
}

/** A length off a roll: in metres when that is plain. */
export function rollText(length: Length, unit: Unit): string {
  const metres = length.div(1000)
  return metres.mul(10).d === 1n ? `${metres.valueOf()} m` : formatLength(length, unit)
}

/** What is there, as the shopping list says it. */
export const thereText = (quantity: Quantity, unit: Unit): string =>
  quantity.kind === 'length' ? rollText(quantity.length, unit) : say(quantity, unit)
