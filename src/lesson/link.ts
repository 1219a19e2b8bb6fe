import { type Reading, report } from '../card/reading.ts'
import type { Place } from '../length/finding.ts'

/** Whether a text is the whole address of a page, one that a browser opens. */
export const isLink = (text: string): boolean => /^https?:\/\/[^\s/]+\S*$/i.test(text)

/**
 * The longest link, in bytes of UTF-8, that a code carries which is still small enough for a page: version 16 at error
 * correction M has 81 modules a side and holds 450 bytes (ISO/IEC 18004, table of capacities).
 */
export const longestLink = 450

/** Length of a link in bytes of UTF-8, as a code counts it. */
export const linkBytes = (link: string): number => new TextEncoder().encode(link).length

/** Tells a link that is too long to be printed as a code: it is printed in letters then. */
export function checkLinkLength(reading: Pick<Reading, 'findings'>, link: string, place: Place): void {
  const bytes = linkBytes(link)
  if (bytes <= longestLink) return
  report(
    reading,
    'long-link',
    place,
    `This link has ${bytes} bytes, and a code that a phone reads from paper holds ${longestLink}: it is printed without a code`,
    'Write a shorter address of the same page, without what follows a `?`, if it works without that',
    'warning',
  )
}
