import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { contrast } from '../draw/contrast.ts'

interface Known {
  readonly needs: { readonly text: number; readonly lines: number }
  readonly cases: readonly { readonly fg: string; readonly bg: string; readonly ratio: number }[]
}

const known = JSON.parse(readFileSync('tests/data/contrast.json', 'utf8')) as Known
const css = readFileSync('themes/step-sheet/handout.css', 'utf8')
const named = new Map(
  [...css.matchAll(/--(\w+): (?:var\(--brand-\w+, )?(#[\da-f]{3,6})\)?;/g)].map(
    ([, name = '', colour = '']) => [name, long(colour)],
  ),
)
const colour = (name: string) => named.get(name) ?? `no colour ${name}`

function long(colour: string): string {
  return colour.length === 4 ? `#${[...colour.slice(1)].map((c) => c + c).join('')}` : colour
}

test.each(known.cases)('$fg on $bg is $ratio, as published', ({ fg, bg, ratio }) => {
  expect(Math.abs(contrast(fg, bg) - ratio)).toBeLessThan(0.0005)
})

// What the style sheet sets on what: text on paper, and call-outs on their tints.
test.each([
  ['ink', 'paper'],
  ['slate', 'paper'],
  ['rust', 'paper'],
  ['ink', 'moss'],
  ['ink', 'sea'],
  ['ink', 'sand'],
])('%s is read easily on %s', (text, ground) => {
  expect(contrast(colour(text), colour(ground))).toBeGreaterThanOrEqual(known.needs.text)
})

test('the frame of a caution and the boxes to tick are seen', () => {
  for (const line of ['rust', 'ink'])
    expect(contrast(colour(line), colour('paper'))).toBeGreaterThanOrEqual(known.needs.lines)
})

test('rules are too light for text, and no text has their colour', () => {
  expect(contrast(colour('rule'), colour('paper'))).toBeLessThan(known.needs.text)
  expect(css.match(/[^-]color: var\(--rule\)/g)).toBeNull()
})

test('no rule sets a colour by hand, where it could be forgotten', () => {
  const loose = css.replace(/:root \{[^}]*\}/, '').replace(/url\("[^"]*"\)/g, '')
  const colours = [...loose.matchAll(/#[\da-f]{3,6}\b/g)].map(([found]) => long(found))
  // The table behind the sheet is seen on a screen only.
  expect([...new Set(colours)].filter((found) => found !== '#ece7dc')).toEqual([])
})
