import type { Money } from './money.ts'

/** `£2.20`, `2.20 EUR`: signs stand before the amount, words behind it; the cent is rounded as a till does. */
export function moneyText(money: Money, currency: string): string {
  const amount = money.round(2).toFraction() === '0' ? '0.00' : money.valueOf().toFixed(2)
  if (currency === '') return amount
  return /^\p{L}{2,}$/u.test(currency) ? `${amount} ${currency}` : `${currency}${amount}`
}

/** The amount in hundredths as a number for machines. */
export const moneyNumber = (money: Money): number => money.round(2).valueOf()
