import { expect, test } from 'vitest'
import { readLibrary } from '../../../src/workshop/library/read-library.ts'

test('without a word, each lesson is wanted in its own sizes and unit, on A4', () => {
  const { file, findings } = readLibrary('')
  expect(findings).toEqual([])
  expect(file).toMatchObject({
    sizes: { own: true, offered: true, more: [] },
    units: ['own'],
    papers: ['a4'],
    themes: [{ text: 'step-sheet' }],
    leftOut: [],
  })
})

test('what stands in it is wanted, each thing once', () => {
  const { file, findings } = readLibrary(`title: Paper at the harbour
sizes: [own, A6 landscape, 6 x 6 in]
units: [in, mm, in]
papers: [a4, letter]
themes: [step-sheet, ours, ours]
leave out: [drafts, old.md]
`)
  expect(findings).toEqual([])
  expect(file.title).toBe('Paper at the harbour')
  expect([file.sizes.own, file.sizes.offered]).toEqual([true, false])
  expect(file.sizes.more.map(({ text }) => text)).toEqual(['A6 landscape', '6 x 6 in'])
  expect([file.units, file.papers]).toEqual([
    ['in', 'mm'],
    ['a4', 'letter'],
  ])
  expect(file.themes.map(({ text }) => text)).toEqual(['step-sheet', 'ours'])
  expect(file.leftOut).toEqual(['drafts', 'old.md'])
})

test.each([
  ['size: own', 'unknown-key', 1, 1],
  ['title: A\nunits: [cm]', 'value', 2, 9],
  ['papers: [A3]', 'value', 1, 10],
  ['sizes: [own, 6 x]', undefined, 1, 14],
  ['themes: [{a: b}]', 'value', 1, 10],
  ['units: [in', 'yaml', 1, 11],
])('%j has a finding at its place, with a cure', (text, rule, line, column) => {
  const { findings } = readLibrary(text)
  expect(findings).toHaveLength(1)
  const [finding] = findings
  if (rule) expect(finding?.rule).toBe(rule)
  expect([finding?.place?.line, finding?.severity]).toEqual([line, 'error'])
  expect(finding?.place?.column).toBeGreaterThanOrEqual(column)
  expect(finding?.suggestion).toMatch(/\w/)
})
