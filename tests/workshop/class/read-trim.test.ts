import { describe, expect, test } from 'vitest'
import { readClass } from '../../../src/workshop/class/read-class.ts'

const read = (trim: string) =>
  readClass(`people: 3\nlesson: a.md\nsheets: {blue: {size: 210 x 297 mm, trim: ${trim}}}`)
const trimOf = (trim: string) => {
  const { file, findings } = read(trim)
  expect(findings).toEqual([])
  const own = file.sheets.get('blue')?.[0]?.trim ?? {}
  return Object.fromEntries(Object.entries(own).map(([edge, by]) => [edge, by.valueOf()]))
}

describe('what is cut off a sheet first', () => {
  test.each([
    ['5 mm', { left: 5, right: 5, top: 5, bottom: 5 }],
    ['{left: 5 mm}', { left: 5 }],
    ['{sides: 5 mm, right: 2 mm}', { left: 5, right: 2 }],
    ['{ends: 1/4 in}', { top: 6.35, bottom: 6.35 }],
    ['[1 mm, 2 mm, 3 mm, 0 mm]', { left: 1, right: 2, top: 3 }],
    ['0 mm', {}],
  ])('%s', (text, expected) => {
    expect(trimOf(text)).toEqual(expected)
  })
  test.each([
    ['{lefft: 5 mm}', 'Unexpected key `lefft` in `trim`', /`left`/],
    ['[5 mm, 5 mm]', 'A sheet has four edges, but 2 are listed', /List left/],
    ['{sides: 105 mm}', 'Trimmed by this, nothing is left of the sheet', /trim: \{left: 5 mm\}/],
    ['{top: 200 mm, bottom: 97 mm}', 'Trimmed by this, nothing is left of the sheet', /trim: 5 mm/],
    ['soon', /./, /trim: 10 mm|length/],
  ])('%s is told, with a cure', (text, message, cure) => {
    const { findings } = read(text)
    const [one] = findings
    expect(findings).toHaveLength(1)
    expect(one?.place?.line).toBe(3)
    expect(one?.message).toEqual(typeof message === 'string' ? message : expect.stringMatching(message))
    expect(one?.suggestion).toMatch(cure)
  })
})
