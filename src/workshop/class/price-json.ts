import { moneyNumber } from './money-text.ts'
import type { Price } from './price.ts'
import type { Fee } from './price-wish.ts'

interface FeeJson {
  readonly for: string
  readonly amount: number
}

/** A price for other programs: money to a hundredth, a margin as a part of one. */
export interface PriceJson {
  readonly materials: number
  readonly fees: readonly FeeJson[]
  readonly each: readonly FeeJson[]
  readonly cost: number
  readonly paying: number
  readonly wantedMargin: number
  readonly charge: number
  readonly left: number
  readonly margin: number
  /** With how many who pay the class pays for itself. */
  readonly paysFrom: number
}

export const priceJson = ({ wish, materials, cost, charge, left, margin, pays }: Price): PriceJson => ({
  materials: moneyNumber(materials),
  fees: wish.fees.map(feeJson),
  each: wish.each.map(feeJson),
  cost: moneyNumber(cost),
  paying: wish.paying,
  wantedMargin: wish.margin.valueOf(),
  charge: charge.valueOf(),
  left: moneyNumber(left),
  margin: margin.round(4).valueOf(),
  paysFrom: pays,
})

const feeJson = ({ name, amount }: Fee): FeeJson => ({ for: name, amount: moneyNumber(amount) })
