import { checkKeys, type Reading, report } from '../../card/reading.ts'
import type { Entry, Fields } from '../../card/yaml.ts'
import type { Finding } from '../../length/finding.ts'
import { readingOf } from '../yaml-reading.ts'
import type { BrandWish, Told } from './brand.ts'
import { type Colour, colourOf, contrastOf, readable, readableOn } from './colour.ts'

/** What a workshop can say of its prints. */
export const brandKeys = ['logo', 'name', 'accent', 'second', 'footer'] as const

/**
 * Reads what a workshop puts on its prints. Whatever is wrong is a warning: the numbers of the lesson are right all the
 * same, and it is printed without.
 *
 * @param owner what the keys belong to, for messages.
 */
export function readBrand(fields: Fields, owner: string): { wish: BrandWish; findings: Finding[] } {
  const findings: Finding[] = []
  const reading = readingOf(findings)
  checkKeys(reading, fields, brandKeys, owner)
  const entry = (key: (typeof brandKeys)[number]): Entry | undefined => fields.get(key)?.value
  const text = (
    key: 'logo' | 'name' | 'footer',
    example: string,
  ): Partial<Record<typeof key, Told<string>>> => {
    const told = textIn(reading, entry(key), key, example)
    return told ? { [key]: told } : {}
  }
  const colour = (key: 'accent' | 'second'): Partial<Record<typeof key, Told<Colour>>> => {
    const told = colourIn(reading, entry(key), key)
    return told ? { [key]: told } : {}
  }
  const wish = {
    ...text('logo', 'harbour-mark.svg'),
    ...text('name', 'Quillhaven paper table'),
    ...colour('accent'),
    ...colour('second'),
    ...text('footer', 'Quillhaven paper table, at the old lamp house'),
  }
  return { wish, findings: findings.map((finding) => ({ ...finding, severity: 'warning' })) }
}

function textIn(
  reading: Reading,
  entry: Entry | undefined,
  key: string,
  example: string,
): Told<string> | undefined {
  if (entry === undefined || entry.kind === 'empty') return undefined
  const value = entry.kind === 'text' ? entry.text.replace(/\s+/g, ' ').trim() : ''
  if (value !== '') return { value, place: entry.place }
  report(reading, 'value', entry.place, `\`${key}\` wants a text`, `Write \`${key}: ${example}\``)
  return undefined
}

const written = (key: string, colour: string): string => `\`${key}: "${colour}"\``

function colourIn(reading: Reading, entry: Entry | undefined, key: string): Told<Colour> | undefined {
  if (entry === undefined) return undefined
  const { place } = entry
  const cure = `Write six digits in quotes, such as ${written(key, '#1b5e6b')}`
  if (entry.kind === 'empty') {
    report(
      reading,
      'value',
      place,
      `\`${key}\` has no colour: what follows a \`#\` outside quotes is left out`,
      cure,
    )
    return undefined
  }
  const colour = entry.kind === 'text' ? colourOf(entry.text) : undefined
  if (!colour) {
    const found = entry.kind === 'text' ? `\`${entry.text.trim()}\`` : 'This'
    report(reading, 'value', place, `${found} is no colour`, cure)
    return undefined
  }
  const value = readableOn(colour, '#ffffff')
  if (value !== colour)
    report(
      reading,
      'faint-colour',
      place,
      `\`${key}\` has a contrast of ${ratio(contrastOf(colour, '#ffffff'))} on white, and words want ${readable}:1, so \`${value}\` is printed`,
      `Write ${written(key, value)}, which is the nearest darker one, or one that is darker still`,
    )
  return { value, place }
}

/** Rounded down, so that what is too little never looks like enough. */
const ratio = (contrast: number): string => `${Math.floor(contrast * 10) / 10}:1`
