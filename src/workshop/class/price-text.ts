import type Fraction from 'fraction.js'
import { formatNumber } from '../../length/format.ts'
import { moneyText } from './money-text.ts'
import type { Price } from './price.ts'

/** What to charge and what comes of it, in words. */
export function priceText(price: Price, currency: string): string {
  const { wish, exact, charge, left, margin, pays } = price
  const say = (amount: Fraction): string => moneyText(amount, currency)
  const wanted = wish.margin.equals(0)
    ? 'To pay for all of it'
    : `To have ${percentText(wish.margin)} of the price left when all is paid`
  const rounded = charge.equals(exact) ? '' : `, ${moneyText(exact, currency)} rounded up`
  return [
    `${wanted}, charge ${say(charge)}${rounded}.`,
    `${wish.paying} who pay bring ${say(charge.mul(wish.paying))}, and ${say(left)} are left, ${percentText(margin)} of it.`,
    pays === 0 ? '' : `It pays for itself from ${pays} ${pays === 1 ? 'person' : 'people'} on.`,
  ]
    .filter((sentence) => sentence !== '')
    .join(' ')
}

/** `20 %`, `33.3 %`: to a tenth. */
const percentText = (part: Fraction): string => `${formatNumber(part.mul(100).round(1), 'mm')}\u00a0%`
