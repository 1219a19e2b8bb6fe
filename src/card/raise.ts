import { inches, type Length, shorter, zero } from '../length/length.ts'
import { lengthCell, type Reading, report, say } from './reading.ts'
import type { Cell } from './scope.ts'
import type { Entry } from './yaml.ts'

/** Thicknesses that double-coated polyethylene foam tape is made in (Shurtape Specialty). The words are ours. */
const foams: Readonly<Record<string, string>> = {
  'thin foam tape': '1/32 in',
  'foam tape': '1/16 in',
  'thick foam tape': '1/8 in',
}

/** The words for foam tape. */
export const foamWords: readonly string[] = Object.keys(foams)

/** How high foam holds something: a length, or one of the words for foam tape. It is what it is, off the ruler. */
export function raiseCell(reading: Reading, name: string, entry: Entry | undefined): Cell<Length> {
  const foam = entry?.kind === 'text' ? foams[entry.text.trim()] : undefined
  const written = entry?.kind === 'text' && foam ? { ...entry, text: foam } : entry
  const cell = lengthCell(reading, `${name}.raise`, written, '0', 'exact')
  return () => {
    const raise = cell()
    if (entry && (shorter(raise, zero) || shorter(highest, raise))) {
      report(
        reading,
        'value',
        entry.place,
        `\`${name}\` cannot be raised by ${say(reading, raise)}`,
        `Write a height such as \`raise: 1 mm\`, at most ${say(reading, highest)}, or one of ${foamWords.map((word) => `\`${word}\``).join(', ')}`,
      )
      return zero
    }
    return raise
  }
}

/** Higher than this nothing in a card is held by foam. Common practice, no source. */
const highest = inches(1)
