import Fraction from 'fraction.js'
import { type Length, minus, over, times, zero } from '../../length/length.ts'
import type { Need, Quantity } from '../needs.ts'
import type { Money, SheetOffer, SupplyOffer } from './class-file.ts'

/** A line of the shopping list. */
export interface Purchase {
  readonly item: string
  /** What the class uses up. */
  readonly need: Quantity
  /** How it is sold; undefined when it is bought one by one, or the class file does not say. */
  readonly sold?: NonNullable<SupplyOffer['sold']>
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

/** What is there, in the terms of what is needed: whole rolls and packs are opened. */
function haveOf(need: Quantity, { have, sold }: Partial<SupplyOffer> = {}): Quantity {
  if (need.kind === 'text' || have === undefined)
    return need.kind === 'length' ? { kind: 'length', length: zero } : { kind: 'count', count: 0 }
  if (need.kind === have.kind) return have
  if (need.kind === 'length')
    return {
      kind: 'length',
      length: have.kind === 'count' && sold?.kind === 'roll' ? times(sold.length, have.count) : zero,
    }
  return { kind: 'count', count: 0 }
}

function countOf(need: Quantity, have: Quantity, sold: SupplyOffer['sold']): number | undefined {
  if (need.kind === 'count' && have.kind === 'count') {
    const rest = Math.max(0, need.count - have.count)
    return sold?.kind === 'pack' ? Math.ceil(rest / sold.count) : sold ? undefined : rest
  }
  if (need.kind === 'length' && have.kind === 'length' && sold?.kind === 'roll')
    return wholeUp(minus(need.length, have.length), sold.length)
  return undefined
}

const wholeUp = (rest: Length, unit: Length): number => (rest.lte(0) ? 0 : over(rest, unit).ceil().valueOf())

/** The sum of what is known of the costs. */
export const totalOf = (purchases: readonly Purchase[]): Money =>
  purchases.reduce((sum, { cost }) => (cost ? sum.add(cost) : sum), new Fraction(0))
