import { expect, test } from 'vitest'
import { readYaml } from '../../src/card/yaml.ts'

const read = (text: string) => readYaml({ text, place: { line: 1, column: 1, offset: 0 } })
const indented = Array.from({ length: 3000 }, (_, i) => `${' '.repeat(i)}a:`).join('\n')

test.each([
  ['brackets', '['.repeat(3000), 1, 101],
  ['braces', `x: 1\ny: ${'{a: '.repeat(9000)}`, 2, 402],
  ['dashes', '- '.repeat(20_000), 1, 1],
  ['question marks', '? '.repeat(5000), 1, 1],
  ['keys in values', 'a: b, '.repeat(3000), 1, 602],
  ['indents', indented, 101, 101],
])('thousands of %s are told once, where they get too deep', (_, text, line, column) => {
  expect(read(text).findings).toMatchObject([
    { message: 'This is nested too deeply', place: { line, column } },
  ])
})

test('many lines, long lists and closed brackets are not deep', () => {
  let keys = 0
  const map = `map: {${'a: {b: 1, c: 2}, '.repeat(400).replace(/a/g, () => `k${++keys}`)}}\n`
  const long = `list: [${'[1], '.repeat(400)}]\n`
  const lines = Array.from({ length: 400 }, (_, i) => `k${i}:\n  - a: {b: 1}\n  - c`).join('\n')
  expect(read(map + long + lines).findings).toEqual([])
})

test('a long text that is no YAML at all is told soon, and not word by word', () => {
  const { findings } = read(`a: b\n${'::figure[a]{show=flat of=base} '.repeat(3000)}`)
  expect(findings.length).toBeGreaterThan(0)
  expect(findings.length).toBeLessThanOrEqual(50)
  expect(findings[0]?.message).toMatch(/^This is not well-formed YAML: [A-Z][^\n]*$/)
}, 5000)
