import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { advance } from '../../src/draw/advance.ts'
import { label, textWidth, wrap } from '../../src/draw/label.ts'
import widths from '../data/commissioner.json' with { type: 'json' }
import { attribute, text, textBox } from './svg.ts'

const of = (words: string) => label(words, [0, 0], { class: 'x', size: 10 })

test('the widths were measured from the font that ships', () => {
  const file = new URL('../../node_modules/@fontsource-variable/commissioner/package.json', import.meta.url)
  const { version } = JSON.parse(readFileSync(file, 'utf8'))
  expect(widths.source).toContain(`@fontsource-variable/commissioner ${version}`)
})

describe('a text is never taken for narrower than it prints', () => {
  test.each(Object.entries(widths.widths))('character %j', (char, [regular = 0, semibold = 0]) => {
    expect(advance(char, 1000)).toBeGreaterThanOrEqual(Math.max(regular, semibold))
  })
  test.each(Object.entries(widths.fractions))('fraction %s', (fraction, [regular = 0, semibold = 0]) => {
    const most = Math.max(regular, semibold)
    expect(textWidth(fraction, 1000)).toBeGreaterThanOrEqual(most)
    // Nor for much wider: figures would be drawn smaller than they need be.
    expect(textWidth(fraction, 1000)).toBeLessThan(most * 1.25)
  })
})

test('the box of a text holds its ink, level and turned', () => {
  for (const turned of [false, true])
    for (const anchor of ['start', 'middle', 'end'] as const) {
      const mark = label('5 7/8 in, jug', [20, 30], { class: 'x', size: 3, turned, anchor })
      const ink = textBox(mark.node())
      expect(mark.box.left).toBeLessThanOrEqual(ink.left + 1e-9)
      expect(mark.box.top).toBeLessThanOrEqual(ink.top + 1e-9)
      expect(mark.box.right).toBeGreaterThanOrEqual(ink.right - 1e-9)
      expect(mark.box.bottom).toBeGreaterThanOrEqual(ink.bottom - 1e-9)
    }
})

test.each([
  ['5 7/8 in', '5\u202f[7/8] in'],
  ['13/16 in', '[13/16] in'],
  ['1, 2 1/2 and 11 3/4 in', '1, 2\u202f[1/2] and 11\u202f[3/4] in'],
  ['12 mm', '12 mm'],
  ['0.5 mm', '0.5 mm'],
  ['2024/25/26', '2024/25/26'],
])('%s is set as %s', (written, set) => {
  const node = of(written).node()
  const shown = node.children.map((c) => (c.type === 'element' ? `[${text(c)}]` : text(c))).join('')
  expect(shown).toBe(set)
})

test('a whole number is bound to its fraction, not to the number before it', () => {
  expect(attribute(of('4 and 3/4').node(), 'fontSize')).toBe('10')
  expect(text(of('4 and 3/4').node())).toBe('4 and 3/4')
})

test('a line breaks between words, never inside a measure', () => {
  const lines = wrap('score the back at 2 11/16 in, 5 3/8 in and 10 1/8 in', 60, 10)
  expect(lines).toEqual(['score the', 'back at', '2 11/16 in,', '5 3/8 in and', '10 1/8 in'])
})

test('what is bound together breaks where it is wider than a line', () => {
  expect(wrap('at\u00a01, 2,\u00a03', 200, 10)).toEqual(['at\u00a01, 2,\u00a03'])
  expect(wrap('at\u00a01,\u00a02,\u00a03', 20, 10)).toEqual(['at 1,', '2, 3'])
})
