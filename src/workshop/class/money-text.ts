import type { Wording } from '../../wording/wording.ts'
import type { Money } from './money.ts'

/**
 * `£2.20`, `2.20 EUR`, `2,20 €`: the cent is rounded as a till does. In English a sign stands before the amount and a
 * word behind it; in other languages both stand where Unicode's locale data (CLDR) have the sign of a currency.
 *
 * @param currency as the class file writes it; empty where it says nothing.
 */
export function moneyText(money: Money, currency: string, { locale }: Pick<Wording, 'locale'>): string {
  const amount = money.round(2).toFraction() === '0' ? 0 : money.valueOf()
  if (locale.startsWith('en')) {
    const text = amount.toFixed(2)
    if (currency === '') return text
    return isWord(currency) ? `${text} ${currency}` : `${currency}${text}`
  }
  const twoPlaces = { minimumFractionDigits: 2, maximumFractionDigits: 2, useGrouping: false } as const
  const rounded = Number(amount.toFixed(2))
  if (currency === '') return new Intl.NumberFormat(locale, twoPlaces).format(rounded)
  return (
    new Intl.NumberFormat(locale, { ...twoPlaces, style: 'currency', currency: 'EUR' })
      // Whose money it is decides nothing but the sign: it is the class file's own.
      .formatToParts(rounded)
      .map(({ type, value }) => (type === 'currency' ? currency : value))
      .join('')
  )
}

/** Whether a currency is written as a word, such as `EUR`, and not as a sign. */
export const isWord = (currency: string): boolean => /^\p{L}{2,}$/u.test(currency)

/** Whether the sign or word of a currency stands behind the amount. */
export const standsBehind = (currency: string, { locale }: Pick<Wording, 'locale'>): boolean =>
  !locale.startsWith('en') || isWord(currency)

/** The amount in hundredths as a number for machines. */
export const moneyNumber = (money: Money): number => money.round(2).valueOf()
