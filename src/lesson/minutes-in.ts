import Fraction from 'fraction.js'

const number = '(\\d+(?:\\.\\d+)?|\\d+ \\d+/[1-9]\\d*|\\d+/[1-9]\\d*|\\d*[¼½¾])'
const hours = new RegExp(
  `^(?:${number}\\s*(?:h|hrs?|hours?))?(?:\\s*(?:and\\s+)?${number}\\s*(?:m|mins?|minutes?)?)?$`,
  'i',
)

/**
 * A duration as people write it, in minutes: `90 min`, `2 h`, `1 1/2 hours`, `1 h 30`, `45`.
 *
 * @returns undefined when it is none, or longer than anybody teaches without a break of days.
 */
export function minutesIn(text: string): number | undefined {
  const [found, h, m] = hours.exec(text.trim()) ?? []
  if (!found || (h === undefined && m === undefined)) return undefined
  const total = amount(h).mul(60).add(amount(m))
  return total.lte(24 * 60) ? total.valueOf() : undefined
}

function amount(text = '0'): Fraction {
  const sign = /^(\d*)([¼½¾])$/.exec(text)
  if (!sign) return new Fraction(text)
  return new Fraction(sign[1] || 0).add(new Fraction({ '¼': 0.25, '½': 0.5, '¾': 0.75 }[sign[2] ?? '½'] ?? 0))
}
