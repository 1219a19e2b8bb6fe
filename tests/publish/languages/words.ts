import { parse } from '@formatjs/icu-messageformat-parser'
import { catalogues } from '../../../src/wording/languages.ts'
import { type Foreign, inventedText } from './invented.ts'

/** The words of a text, in small letters. */
export const wordsIn = (text: string): string[] => text.toLowerCase().match(/\p{L}{2,}/gu) ?? []

/** What stands in a page for who reads and who listens, and in its foot. */
export function saidIn(html: string): string {
  const foot = Array.from(
    html.matchAll(/content:((?:"(?:[^"\\]|\\.)*"|counter\(\w+\)|\s)+)[;}]/g),
    ([, text]) => text,
  )
  const body = html
    .replace(/^.*?<body>/s, '')
    .replace(/<style.*?<\/style>|<script(?! type="application).*?<\/script>/gs, ' ')
  const named = Array.from(
    body.matchAll(/ (?:alt|aria-label|title|data-place|data-name)="([^"]*)"/g),
    ([, text]) => text,
  )
  return [...foot, ...named, body.replace(/<[^>]*>/g, ' ')]
    .join(' ')
    .replace(/counter\(\w+\)|\\[0-9a-f]+ /g, ' ')
    .replace(/&#x([0-9a-f]+);/gi, (_, code: string) => String.fromCodePoint(Number.parseInt(code, 16)))
    .replace(/&[a-z]+;/g, ' ')
}

/** Signs of units and keys, and parts of addresses: the same in all languages. */
const signs = ['mm', 'cm', 'ml', 'min', 'https', 'example']

/** What a message says, without the names and the keys in it: its literals, whose type is 0. */
function literalsOf(message: string): string[] {
  const found: string[] = []
  const walk = (value: unknown): void => {
    if (typeof value !== 'object' || value === null) return
    const { type, value: text } = value as { type?: number; value?: unknown }
    if (type === 0 && typeof text === 'string') found.push(text)
    else for (const one of Object.values(value)) walk(one)
  }
  walk(parse(message, { ignoreTag: true }))
  return found
}

/** Words of a text that are neither the lesson's own nor those of its language. */
export function strange(text: string, lang: Foreign): string[] {
  const own = Object.values(catalogues[lang]).flatMap((area) => Object.values(area))
  const known = new Set([
    ...signs,
    ...wordsIn(inventedText(lang)),
    ...wordsIn(own.flatMap(literalsOf).join(' ')),
  ])
  return [...new Set(wordsIn(text))].filter((word) => !known.has(word))
}
