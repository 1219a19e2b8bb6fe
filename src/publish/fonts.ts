import { readFile } from 'node:fs/promises'
import { createRequire } from 'node:module'

/** A font that comes with foldlore. */
export interface ShippedFont {
  /** Its name in a style sheet. */
  readonly family: string
  readonly package: string
  /** Files are named `NAME-SUBSET-AXES-normal.woff2`. */
  readonly name: string
  readonly axes: string
  readonly weights: string
  readonly style: string
}

/** The fonts that come with foldlore. All of them make real fractions of `7/8` when asked for `frac`. */
export const shippedFonts: readonly ShippedFont[] = [
  {
    family: 'Commissioner Variable',
    package: '@fontsource-variable/commissioner',
    name: 'commissioner',
    axes: 'slnt',
    weights: '100 900',
    style: 'oblique 0deg 12deg',
  },
  {
    // With its optical sizes: titles are drawn finer than text.
    family: 'Source Serif 4 Variable',
    package: '@fontsource-variable/source-serif-4',
    name: 'source-serif-4',
    axes: 'opsz',
    weights: '200 900',
    style: 'normal',
  },
]

const { resolve } = createRequire(import.meta.url)

/**
 * The `@font-face` rules for a page: the fonts that its style sheet names, in the alphabets that its text needs, with the
 * fonts themselves inside.
 *
 * @param css the style sheet of the page.
 * @param text everything that the page says.
 */
export async function fontFaces(css: string, text: string): Promise<string> {
  const rules = shippedFonts.filter(({ family }) => css.includes(family)).map((font) => facesOf(font, text))
  return (await Promise.all(rules)).flat().join('\n')
}

async function facesOf(font: ShippedFont, text: string): Promise<string[]> {
  const ranges = JSON.parse(await once(resolve(`${font.package}/unicode.json`), 'utf8')) as Record<
    string,
    string
  >
  return Promise.all(
    subsetsFor(text, ranges).map(async (subset) => {
      const file = resolve(`${font.package}/files/${font.name}-${subset}-${font.axes}-normal.woff2`)
      const data = await once(file, 'base64')
      return `@font-face{font-family:'${font.family}';font-style:${font.style};font-weight:${font.weights};src:url(data:font/woff2;base64,${data}) format('woff2');unicode-range:${ranges[subset]}}`
    }),
  )
}

/** The package's own files do not change while the program runs: a whole library of lessons reads them once. */
const files = new Map<string, Promise<string>>()
function once(path: string, encoding: 'utf8' | 'base64'): Promise<string> {
  const reading = files.get(path) ?? readFile(path, encoding)
  files.set(path, reading)
  return reading
}

/**
 * The subsets of a font that a text needs.
 *
 * @param ranges unicode ranges by subset, as in CSS: `U+0000-00FF,U+0131`. `latin` is always taken; another one when
 * the text has a character of it that the ones before do not have.
 */
export function subsetsFor(text: string, ranges: Readonly<Record<string, string>>): string[] {
  const order = [
    'latin',
    ...Object.keys(ranges)
      .filter((name) => name !== 'latin')
      .reverse(),
  ]
  // ASCII is latin: only what is beyond it needs a look.
  let left = [...new Set(text.match(/[^\p{ASCII}]/gu))].map((c) => c.codePointAt(0) ?? 0)
  return order.filter((name) => {
    const has = rangesOf(ranges[name] ?? '')
    const rest = left.filter((code) => !has.some(([from, to]) => code >= from && code <= to))
    const needed = rest.length < left.length || name === 'latin'
    left = rest
    return needed
  })
}

const rangesOf = (text: string): [from: number, to: number][] =>
  text.split(',').map((range) => {
    const [from = '', to = from] = range.trim().replace(/^U\+/i, '').split('-')
    return [Number.parseInt(from, 16), Number.parseInt(to, 16)]
  })
