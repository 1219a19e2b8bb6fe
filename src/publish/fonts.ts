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
  /** Whether it makes real fractions of `7/8` when asked for `frac`; where it does not, measures are in another one. */
  readonly fractions: boolean
}

/** The fonts that come with foldlore. */
export const shippedFonts: readonly ShippedFont[] = [
  {
    family: 'Commissioner Variable',
    package: '@fontsource-variable/commissioner',
    name: 'commissioner',
    axes: 'slnt',
    weights: '100 900',
    style: 'oblique 0deg 12deg',
    fractions: true,
  },
  {
    // With its optical sizes: titles are drawn finer than text.
    family: 'Source Serif 4 Variable',
    package: '@fontsource-variable/source-serif-4',
    name: 'source-serif-4',
    axes: 'opsz',
    weights: '200 900',
    style: 'normal',
    fractions: true,
  },
  {
    // It knows 1/2, and 7/8 as plain digits.
    family: 'Atkinson Hyperlegible Next Variable',
    package: '@fontsource-variable/atkinson-hyperlegible-next',
    name: 'atkinson-hyperlegible-next',
    axes: 'wght',
    weights: '200 800',
    style: 'normal',
    fractions: false,
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
  const fonts = shippedFonts.filter(({ family }) => css.includes(family))
  const wanted = await Promise.all(
    fonts.map(async (font) => subsetsFor(text, await rangesIn(font)).map((subset) => ({ font, subset }))),
  )
  const faces = wanted.flat()
  const key = faces.map(({ font, subset }) => `${font.name}-${subset}`).join(' ')
  return once(key, async () =>
    (await Promise.all(faces.map(({ font, subset }) => faceOf(font, subset)))).join('\n'),
  )
}

type Ranges = Readonly<Record<string, string>>

/** Unicode ranges of a font by subset. */
const rangesIn = (font: ShippedFont): Promise<Ranges> =>
  once(`${font.package}/unicode.json`, async (path) => JSON.parse(await readFile(resolve(path), 'utf8')))

async function faceOf(font: ShippedFont, subset: string): Promise<string> {
  const file = resolve(`${font.package}/files/${font.name}-${subset}-${font.axes}-normal.woff2`)
  const [data, ranges] = await Promise.all([readFile(file, 'base64'), rangesIn(font)])
  return `@font-face{font-family:'${font.family}';font-style:${font.style};font-weight:${font.weights};src:url(data:font/woff2;base64,${data}) format('woff2');unicode-range:${ranges[subset]}}`
}

/** The package's own files do not change while the program runs: a whole library of lessons reads them once. */
const made = new Map<string, Promise<unknown>>()
function once<T>(key: string, make: (key: string) => Promise<T>): Promise<T> {
  const making = (made.get(key) as Promise<T> | undefined) ?? make(key)
  made.set(key, making)
  return making
}

/**
 * The subsets of a font that a text needs.
 *
 * @param ranges unicode ranges by subset, as in CSS: `U+0000-00FF,U+0131`. `latin` is always taken; another one when
 * the text has a character of it that the ones before do not have.
 */
export function subsetsFor(text: string, ranges: Ranges): string[] {
  const order = [
    'latin',
    ...Object.keys(ranges)
      .filter((name) => name !== 'latin')
      .reverse(),
  ]
  // ASCII is latin: only what is beyond it needs a look.
  let left = [...new Set(text.match(/[\u0080-\uffff]+/g)?.join(''))].map((c) => c.codePointAt(0) ?? 0)
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
