import type Fraction from 'fraction.js'
import type { Wording } from '../../wording/wording.ts'
import { moneyText } from './money-text.ts'
import type { Price } from './price.ts'

/** What to charge and what comes of it, in words. */
export function priceText(price: Price, currency: string, wording: Wording): string {
  const { wish, exact, charge, left, margin, pays } = price
  const { say } = wording
  const money = (amount: Fraction): string => moneyText(amount, currency, wording)
  const values = {
    goal: wish.margin.equals(0) ? 'cost' : 'margin',
    margin: percentText(wish.margin, wording),
    charge: money(charge),
  }
  const { paying } = wish
  return [
    charge.equals(exact)
      ? say('class.charge', values)
      : say('class.charge-rounded', { ...values, exact: money(exact) }),
    say('class.income', {
      paying,
      income: money(charge.mul(paying)),
      left: money(left),
      margin: percentText(margin, wording),
    }),
    ...(pays === 0 ? [] : [say('class.pays-from', { people: pays })]),
  ].join(' ')
}

/** `20 %`, `33.3 %`: to a tenth. */
const percentText = (part: Fraction, wording: Wording): string =>
  `${wording.in('mm').number(part.mul(100).round(1))}\u00a0%`
