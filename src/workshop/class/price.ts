import Fraction from 'fraction.js'
import type { Money } from './money.ts'
import type { PriceWish } from './price-wish.ts'

/** What a class costs, what to charge for it, and from how many people on it pays. */
export interface Price {
  readonly wish: PriceWish
  /** Paper and supplies, as they are bought. */
  readonly materials: Money
  readonly people: number
  /** Everything that is paid, when all come. */
  readonly cost: Money
  /** What each who pays would have to pay to leave the wanted margin, exactly. */
  readonly exact: Money
  /** That, rounded up. */
  readonly charge: Money
  /** What is left of it all when all come. */
  readonly left: Money
  /** That, as a part of what comes in. */
  readonly margin: Fraction
  /** With how many who pay the class pays for itself: everything is bought, and who does not come eats nothing. */
  readonly pays: number
}

/**
 * The price of a class. With costs c and n people who pay, a price p leaves the part m of itself when n p (1 − m) = c.
 * All is exact; only the price is rounded, and up.
 */
export function priceOf(wish: PriceWish, materials: Money, people: number): Price {
  const fixed = sumOf(wish.fees.map(({ amount }) => amount)).add(materials)
  const each = sumOf(wish.each.map(({ amount }) => amount))
  const cost = fixed.add(each.mul(people))
  const exact = cost.div(wish.paying).div(new Fraction(1).sub(wish.margin))
  const charge = exact.div(wish.step).ceil().mul(wish.step)
  const income = charge.mul(wish.paying)
  const left = income.sub(cost)
  return {
    wish,
    materials,
    people,
    cost,
    exact,
    charge,
    left,
    margin: income.equals(0) ? new Fraction(0) : left.div(income),
    pays: payingFrom(charge, each, fixed.add(each.mul(people - wish.paying))),
  }
}

/** Everyone who pays brings the price less what they cost: so many of them carry the rest. */
function payingFrom(charge: Money, each: Money, rest: Money): number {
  const brings = charge.sub(each)
  return rest.equals(0) || brings.lte(0) ? 0 : rest.div(brings).ceil().valueOf()
}

const sumOf = (amounts: readonly Money[]): Money =>
  amounts.reduce((sum, amount) => sum.add(amount), new Fraction(0))
