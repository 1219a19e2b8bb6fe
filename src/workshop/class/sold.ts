import { areaOf } from '../../length/area.ts'
import { type Length, mm, type Size, shorter } from '../../length/length.ts'
import type { Wording } from '../../wording/wording.ts'
import type { Quantity } from '../needs.ts'
import { quantityText } from '../quantity-text.ts'
import { reelText, reelUnit, stretchText } from '../reel.ts'

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
        holds: quantityText(sold.holds, wording),
      })
  }
}

/** The length of a roll: in metres or yards when it is plain in them. */
function rollText(length: Length, wording: Wording): string {
  const by = reelUnit(length, wording)
  return by ? reelText(length, by, 'up', wording) : stretchText(length, wording)
}

/** What is needed or there, in the unit of the roll that it is sold as, so that the two can be compared. */
export function besideSold(
  quantity: Quantity,
  sold: Sold | undefined,
  which: 'up' | 'down',
  wording: Wording,
): string {
  if (quantity.kind !== 'length') return quantityText(quantity, wording)
  const by = sold?.kind === 'roll' ? reelUnit(sold.length, wording) : undefined
  const isShort = wording.unit === 'mm' && shorter(quantity.length, mm(1000))
  return by && !isShort
    ? reelText(quantity.length, by, which, wording)
    : stretchText(quantity.length, wording)
}
