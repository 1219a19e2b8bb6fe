import { type Place, suggestWord } from '../../../length/finding.ts'
import { fieldsOf, type Reading, report, textOf } from '../../reading.ts'
import type { Entry, Field, Fields } from '../../yaml.ts'

/** The panel that an entry names; otherwise a finding with the nearest one. */
export function panelIn(
  reading: Reading,
  key: string,
  entry: Entry | undefined,
  names: readonly string[],
  place: Place,
): string | undefined {
  const word = entry?.kind === 'text' ? entry.text.trim() : ''
  if (names.includes(word)) return word
  report(
    reading,
    'unknown-name',
    entry?.place ?? place,
    word === ''
      ? `\`${key}\` wants the name of a panel`
      : `Unexpected name \`${word}\` at \`${key}\`, expected a panel`,
    suggestWord(word, names),
  )
  return undefined
}

/** The items of a list, each a group of keys. */
export function groupsIn(
  reading: Reading,
  field: Field | undefined,
  example: string,
): { fields: Fields; place: Place }[] {
  const value = field?.value
  if (!field || !value || value.kind === 'empty') return []
  if (value.kind !== 'list') {
    report(
      reading,
      'value',
      value.place,
      `\`${field.key}\` wants a list`,
      `Write one \`- ${example}\` a line`,
    )
    return []
  }
  return value.items.map((item) => ({
    fields: fieldsOf(reading, item, `\`${field.key}\` wants groups of keys`, `Write \`- ${example}\``),
    place: item.place,
  }))
}

/** A plain number of degrees; otherwise a finding, and undefined. */
export function degreesIn(
  reading: Reading,
  entry: Entry,
  [least, most]: readonly [number, number],
  words: Readonly<Record<string, number>> = {},
): number | undefined {
  const known = Object.keys(words).map((word) => `\`${word}\` or `)
  const wanted = `Write ${known.join('')}a number of degrees from ${least} to ${most}`
  const text = textOf(reading, entry, 'An angle is wanted', wanted)?.text.trim()
  if (text === undefined) return undefined
  const degrees =
    words[text] ?? (/^-?\d+(\.\d+)?\s*(°|degrees)?$/.test(text) ? Number.parseFloat(text) : Number.NaN)
  if (degrees >= least && degrees <= most) return degrees
  report(reading, 'value', entry.place, `Unexpected \`${text}\`, expected an angle`, wanted)
  return undefined
}
