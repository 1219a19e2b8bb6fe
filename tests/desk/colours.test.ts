import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'

/** Contrast of two colours: WCAG 2.2, "contrast ratio" and "relative luminance". */
function contrast(a: string, b: string): number {
  const luminance = (colour: string): number => {
    const parts = [1, 3, 5].map((i) => Number.parseInt(colour.slice(i, i + 2), 16) / 255)
    const [r = 0, g = 0, b2 = 0] = parts.map((c) => (c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4))
    return 0.2126 * r + 0.7152 * g + 0.0722 * b2
  }
  const [dark = 0, light = 0] = [luminance(a), luminance(b)].sort((x, y) => x - y)
  return (light + 0.05) / (dark + 0.05)
}

const css = readFileSync('src/desk/page/style/colours.css', 'utf8')
const blocks = [...css.matchAll(/(:root[^{]*)\{([^}]*--ink[^}]*)\}/g)].map(
  ([, selector = '', text = '']) => ({
    selector: selector.trim(),
    colours: Object.fromEntries(
      [...text.matchAll(/(--[\w-]+): (#[0-9a-f]{6});/g)].map(([, name, value]) => [name, value]),
    ),
  }),
)

test('there is a day and a night, and the night that is chosen is the one of the system', () => {
  expect(blocks.map(({ selector }) => selector)).toEqual([
    ':root',
    ':root:not([data-light="day"])',
    ':root[data-light="night"]',
  ])
  expect(blocks[2]?.colours).toEqual(blocks[1]?.colours)
})

const grounds = ['--paper', '--desk', '--raised', '--sand', '--sea', '--moss']
const texts = ['--ink', '--quiet', '--accent', '--slate']

test.each(blocks)('words can be read on every ground: $selector', ({ colours }) => {
  for (const text of texts)
    for (const ground of grounds)
      expect([text, ground, contrast(colours[text] ?? '', colours[ground] ?? '') >= 4.5]).toEqual([
        text,
        ground,
        true,
      ])
})

test.each(blocks)('edges of what can be used, and the focus, are seen: $selector', ({ colours }) => {
  for (const line of ['--edge', '--focus'])
    for (const ground of ['--paper', '--desk', '--raised'])
      expect([line, ground, contrast(colours[line] ?? '', colours[ground] ?? '') >= 3]).toEqual([
        line,
        ground,
        true,
      ])
})
