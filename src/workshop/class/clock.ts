import { onceFor } from '../../length/once.ts'
import type { Wording } from '../../wording/wording.ts'

/** A time of day, in minutes after midnight. */
export type Clock = number

/**
 * Reads a time as people write it: `10:00`, `9.30`, `14h15`, `2 pm`, `10:30 am`.
 *
 * @returns undefined when it is none.
 */
export function clockIn(text: string): Clock | undefined {
  const [, hours, minutes = '0', half] =
    /^(\d{1,2})(?:\s*[:.h]\s*(\d{2})?)?\s*(am|pm|a\.m\.|p\.m\.)?$/i.exec(text.trim()) ?? []
  if (hours === undefined) return undefined
  const [h, m] = [Number(hours), Number(minutes)]
  if (m > 59 || h > (half ? 12 : 23) || (half && h === 0)) return undefined
  const late = half?.toLowerCase().startsWith('p')
  return (half ? (h % 12) + (late ? 12 : 0) : h) * 60 + m
}

/** `09:05`, as programs read it; after midnight it goes on from 00:00. */
export function clockText(clock: Clock): string {
  const two = (n: number): string => String(n).padStart(2, '0')
  const whole = Math.round(clock)
  return `${two(Math.floor(whole / 60) % 24)}:${two(whole % 60)}`
}

const formatFor = onceFor(
  (locale: string) => new Intl.DateTimeFormat(locale, { timeStyle: 'short', timeZone: 'UTC' }),
)

/** The same as a list says it: `09:05`, `9:05`, `9:05 AM`, as Unicode's locale data (CLDR) has it. */
export const timeText = (clock: Clock, { locale }: Pick<Wording, 'locale'>): string =>
  formatFor(locale).format(Math.round(clock) * 60_000)
