import { expect, test } from 'vitest'
import { readYaml } from '../../src/card/yaml.ts'
import { proveCard } from '../../src/fold/prove-card.ts'
import { usualGrid } from '../../src/length/grid.ts'

const prove = (text: string) =>
  proveCard(
    { name: 'card', text, place: { line: 1, column: 1, offset: 0 } },
    { unit: 'in', grid: usualGrid.in },
  )
const tooMuch = (text: string) => prove(text).findings.filter(({ rule }) => rule === 'too-much')
const side = 'fold: side\nclosed: 5 x 7 in\n'
const list = (n: number, one: (i: number) => string): string =>
  Array.from({ length: n }, (_, i) => one(i)).join('')
const layers = (n: number): string => `layers:\n${list(n, (i) => `  l${i}: {on: front, border: 1/8 in}\n`)}`
const pieces = (n: number): string => `pieces:\n${list(n, (i) => `  p${i}: {size: 1 x 1 in}\n`)}`
const panels = (n: number): string =>
  `fold: free\nclosed: 5 x 7 in\npanels:\n${list(n, (i) => `  p${i}: 1 in\n`)}creases: [${list(n - 1, () => 'valley, ')}]\n`

test('a card of sixty layers and forty pieces is worked out in seconds', () => {
  const before = process.cpuUsage()
  const { proof } = prove(`${side}${layers(60)}${pieces(40)}`)
  expect(proof?.closed).toBeDefined()
  expect(process.cpuUsage(before).user / 1e6).toBeLessThan(10)
})

test.each([
  ['layers', `${side}${layers(101)}`, 104],
  ['layers and pieces', `${side}${layers(60)}${pieces(41)}`, 105],
  ['thousands of layers', `${side}${layers(2000)}`, 104],
  ['panels', panels(101), 104],
  [
    'panels of a strip',
    panels(101).replace(/panels:.*/s, (of) => `strips:\n  a:\n${of.replace(/^/gm, '    ')}`),
    105,
  ],
])('one more is told at its place, and the card is not worked out: %s', (_, text, line) => {
  const before = process.cpuUsage()
  expect(tooMuch(text)).toMatchObject([
    { severity: 'error', place: { line }, suggestion: 'Make several cards of it, or leave parts out' },
  ])
  expect(process.cpuUsage(before).user / 1e6).toBeLessThan(10)
})

test('a YAML text of a hundred thousand characters is read, and a longer one is told', () => {
  const read = (length: number) =>
    readYaml({
      text: `${'a: b # the tide\n'}${'# the tide\n'.repeat(length)}`.slice(0, length),
      place: { line: 3, column: 1, offset: 20 },
    })
  expect(read(100_000).findings).toEqual([])
  expect(read(100_000).top.value.fields.has('a')).toBe(true)
  expect(read(100_001).findings).toMatchObject([
    { rule: 'too-much', severity: 'error', place: { line: 3, column: 1 } },
  ])
})
