import fc from 'fast-check'
import { expect, test } from 'vitest'
import { fontFaces, shippedFonts, subsetsFor } from '../../src/publish/fonts.ts'
import { withBrowser } from './with-browser.ts'

const browser = withBrowser()
const families = shippedFonts.map(({ family }) => family)
const withFractions = shippedFonts.filter(({ fractions }) => fractions).map(({ family }) => family)
const names = families.join(' ')

/** Widths in px of texts set in a font at 100 px, plain and with real fractions. */
async function widths(
  family: string,
  texts: readonly string[],
): Promise<{ plain: number; frac: number; font: boolean }[]> {
  const page = await browser().newPage()
  const spans = texts.map(
    (text) => `<span>${text}</span><span style="font-feature-settings:'frac'">${text}</span>`,
  )
  await page.setContent(
    `<!doctype html><meta charset="utf-8"><style>${await fontFaces(names, texts.join(''))} span{font:100px '${family}', monospace;display:inline-block}</style>${spans.join('<br>')}`,
  )
  const found = await page.evaluate(async (name) => {
    const { document } = globalThis as unknown as {
      document: {
        fonts: { ready: Promise<unknown>; check(font: string): boolean }
        querySelectorAll(selector: string): Iterable<{ getBoundingClientRect(): { width: number } }>
      }
    }
    await document.fonts.ready
    const all = [...document.querySelectorAll('span')].map((span) => span.getBoundingClientRect().width)
    return { all, font: document.fonts.check(`100px '${name}'`) }
  }, family)
  await page.close()
  return texts.map((_, i) => ({
    plain: found.all[2 * i] ?? Number.NaN,
    frac: found.all[2 * i + 1] ?? Number.NaN,
    font: found.font,
  }))
}

test.each(withFractions)(
  '%s makes real fractions: they are narrower than their plain digits',
  async (family) => {
    const found = await widths(family, ['1/2', '7/8', '3/4', '5/16', '13/16', '31/32'])
    for (const { plain, frac, font } of found) {
      expect(font).toBe(true)
      expect(plain).toBeGreaterThan(0)
      expect(frac).toBeLessThan(0.9 * plain)
    }
  },
)

test('a font that is said to have none makes plain digits of some, so measures must not be set in it', async () => {
  for (const { family, fractions } of shippedFonts) {
    if (fractions) continue
    const found = await widths(family, ['7/8', '5/16', '13/16', '31/32'])
    for (const { plain, font } of found) expect([font, plain > 0]).toEqual([true, true])
    expect(found.some(({ plain, frac }) => frac > 0.9 * plain)).toBe(true)
  }
})

test.each(families)(
  '%s keeps a whole number as it is when only its fraction is a fraction',
  async (family) => {
    const [number] = await widths(family, ['58'])
    // Inside a `frac` span digits alone may be small: that is why whole numbers stay outside of it.
    expect(number?.plain).toBeGreaterThan(60)
  },
)

test('the alphabets that a text needs, and no others', async () => {
  const ranges = {
    cyrillic: 'U+0400-045F',
    'latin-ext': 'U+0100-02BA,U+1E00-1E9F',
    latin: 'U+0000-00FF,U+2000-206F',
  }
  expect(subsetsFor('Score at 5\u202f7/8 in, façade', ranges)).toEqual(['latin'])
  expect(subsetsFor('Łódź', ranges)).toEqual(['latin', 'latin-ext'])
  expect(subsetsFor('море', ranges)).toEqual(['latin', 'cyrillic'])
  expect(subsetsFor('漢', ranges)).toEqual(['latin'])
  const [plain, polish] = await Promise.all([fontFaces(names, 'Cut'), fontFaces(names, 'Łódź')])
  expect(plain.match(/@font-face/g)).toHaveLength(families.length)
  expect(polish.match(/@font-face/g)).toHaveLength(2 * families.length)
})

test('fonts that a style sheet does not name stay out', async () => {
  expect(await fontFaces('body{font-family:serif}', 'Cut')).toBe('')
})

test('every character that a subset has is covered by those taken', () => {
  const ranges = { b: 'U+0400-045F', a: 'U+0100-017F,U+0420-0430', latin: 'U+0000-00FF' }
  const has = (name: string, code: number) =>
    (ranges[name as 'a'] ?? '').split(',').some((range) => {
      const [from = 0, to = from] = range
        .slice(2)
        .split('-')
        .map((n) => Number.parseInt(n, 16))
      return code >= from && code <= to
    })
  fc.assert(
    fc.property(fc.array(fc.integer({ min: 0x20, max: 0x47f })), (codes) => {
      const taken = subsetsFor(String.fromCodePoint(...codes), ranges)
      for (const code of codes)
        if (Object.keys(ranges).some((name) => has(name, code)))
          expect(taken.some((name) => has(name, code))).toBe(true)
    }),
  )
})
