import Fraction from 'fraction.js'
import { noArea } from '../../length/area.ts'
import { zero } from '../../length/length.ts'
import { multiplied } from '../multiplied.ts'
import { likeness, type Need, type Quantity } from '../needs.ts'
import type { SheetOffer, SupplyOffer } from './class-file.ts'
import type { Money } from './money.ts'
import { quantityIn, type Sold } from './sold.ts'

/** A line of the shopping list. */
export interface Purchase {
  readonly item: string
  /** What the class uses up. */
  readonly need: Quantity
  /** How it is sold; undefined when it is bought one by one, or the class file does not say. */
  readonly sold?: Sold
  /** Of sheets, the size: several sizes of one stock are several lines. */
  readonly sheet?: SheetOffer
  /** There already, of what is needed. */
  readonly have: Quantity
  /** How many of what is sold; undefined when nothing is said that can be counted. */
  readonly count?: number
  readonly cost?: Money
}

/** What must be bought of a supply: what there is is taken off, and the rest is rounded up to what is sold. */
export function purchaseOf({ item, need }: Need, offer: SupplyOffer | undefined): Purchase {
  const { sold, price } = offer ?? {}
  const have = haveOf(need, offer)
  const count = countOf(need, have, sold)
  return {
    item,
    need,
    have,
    ...(sold && { sold }),
    ...(count !== undefined && { count }),
    ...(count !== undefined && price !== undefined && { cost: price.mul(count) }),
  }
}

/** Sheets that a plan uses, less those that lie there, in whole packs. */
export function purchaseOfSheets(item: string, sheet: SheetOffer, used: number): Purchase {
  const wanted = Math.max(0, used - sheet.have)
  const count = sheet.offcut ? 0 : Math.ceil(wanted / sheet.pack)
  return {
    item,
    need: { kind: 'count', count: used },
    sheet,
    ...(sheet.pack > 1 && { sold: { kind: 'pack', count: sheet.pack } }),
    have: { kind: 'count', count: sheet.have },
    count,
    // The price is that of one sheet.
    ...(sheet.price !== undefined && { cost: sheet.price.mul(count * sheet.pack) }),
  }
}

/** Whether what is needed can be measured in what is sold: grams in grams, a length in rolls. */
export const fits = (need: Quantity, sold: Sold): boolean => likeness(need) === likeness(quantityIn(sold))

/** What is there, in the terms of what is needed: whole rolls, sheets and bottles are opened, and packs are counted out. */
function haveOf(need: Quantity, { have, sold }: Partial<SupplyOffer> = {}): Quantity {
  const none = noneOf(need)
  if (need.kind === 'text' || have === undefined) return none
  if (likeness(have) === likeness(need)) return have
  const whole = sold && sold.kind !== 'pack' && have.kind === 'count' ? quantityIn(sold) : undefined
  if (whole && have.kind === 'count' && likeness(whole) === likeness(need))
    return have.count > 0 ? multiplied(whole, have.count) : none
  return none
}

/** Nothing at all of what is needed. */
function noneOf(need: Quantity): Quantity {
  switch (need.kind) {
    case 'length':
      return { kind: 'length', length: zero }
    case 'area':
      return { kind: 'area', area: noArea }
    case 'dose':
      return { kind: 'dose', dose: { ...need.dose, amount: new Fraction(0) } }
    default:
      return { kind: 'count', count: 0 }
  }
}

function countOf(need: Quantity, have: Quantity, sold: Sold | undefined): number | undefined {
  if (need.kind === 'text') return undefined
  if (!sold) return need.kind === 'count' && need.of === undefined ? wholeUp(need, have, one) : undefined
  return fits(need, sold) ? wholeUp(need, have, quantityIn(sold)) : undefined
}

const one: Quantity = { kind: 'count', count: 1 }

/** How many of `unit` make up what is needed and not there. */
function wholeUp(need: Quantity, have: Quantity, unit: Quantity): number {
  const rest = numberOf(need).sub(numberOf(have))
  return rest.lte(0) ? 0 : rest.div(numberOf(unit)).ceil().valueOf()
}

/** A quantity as an exact number of its own unit; only like quantities may be compared by it. */
function numberOf(quantity: Quantity): Fraction {
  switch (quantity.kind) {
    case 'count':
      return new Fraction(quantity.count)
    case 'length':
      return quantity.length
    case 'area':
      return quantity.area
    case 'dose':
      return quantity.dose.amount
    case 'text':
      return new Fraction(0)
  }
}

/** Whether there is none of it. */
export const isNothing = (quantity: Quantity): boolean =>
  quantity.kind !== 'text' && numberOf(quantity).equals(0)

/** The sum of what is known of the costs. */
export const totalOf = (purchases: readonly Purchase[]): Money =>
  purchases.reduce((total, { cost }) => (cost ? total.add(cost) : total), new Fraction(0))
