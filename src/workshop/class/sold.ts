import { areaOf } from '../../length/area.ts'
import type { Length, Size } from '../../length/length.ts'
import type { Wording } from '../../wording/wording.ts'
import type { Quantity } from '../needs.ts'
import { quantityText } from '../quantity-text.ts'

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
export function soldText(sold: Sold, wording: Wording): string {
  const { say } = wording
  switch (sold.kind) {
    case 'roll':
      return say('class.roll-of', { length: rollText(sold.length, wording) })
    case 'pack':
      return say('class.pack-of', { count: sold.count })
    case 'sheet':
      return say('class.sheet-of', { size: wording.size(sold.size) })
    case 'container':
      return say('class.container-of', {
        container: sold.container,
        holds: thereText(sold.holds, wording),
      })
  }
}

/** A length off a roll: in metres when that is plain. */
export function rollText(length: Length, wording: Wording): string {
  const metres = length.div(1000)
  return metres.mul(10).d === 1n
    ? wording.say('measures.with-unit', { number: wording.in('mm').number(metres), unit: 'm' })
    : wording.length(length)
}

/** What is there, as the shopping list says it. */
export const thereText = (quantity: Quantity, wording: Wording): string =>
  quantity.kind === 'length' ? rollText(quantity.length, wording) : quantityText(quantity, wording)
