import { describe, expect, test } from 'vitest'
import { inches, mm, same } from '../../src/length/length.ts'
import { sheetNames, sheetSize } from '../../src/length/paper.ts'
import data from '../data/paper-sizes.json' with { type: 'json' }

/** Sources stand in the data file: PWG 5101.1 media names, ISO 216 and ISO 269. */
describe('standard sheets', () => {
  test.each(data.sheets)('$id ($standard)', ({ id, w, h, unit }) => {
    const size = sheetSize(id)
    const expected = unit === 'in' ? [inches(w * 16, 16), inches(h * 16, 16)] : [mm(w), mm(h)]
    expect([size?.width.valueOf(), size?.height.valueOf()]).toEqual(expected.map((x) => x.valueOf()))
  })

  // CSS Paged Media calls 11 × 17 in a ledger.
  test.each(data.pageKeywords)('$keyword as a page of CSS', ({ keyword, w, h, unit }) => {
    const size = sheetSize(keyword === 'ledger' ? 'Tabloid' : keyword)
    const side = (x: number) => (unit === 'in' ? inches(x * 16, 16) : mm(x))
    expect([size?.width.valueOf(), size?.height.valueOf()]).toEqual([w, h].map((x) => side(x).valueOf()))
  })

  test('every name has a size', () => {
    for (const name of sheetNames) expect(sheetSize(name), name).toBeDefined()
  })

  // ISO 216 construction: A(n+1) is A(n) halved across its long side, whole millimetres, rounded down.
  test.each(['A', 'B', 'C'])('%s sheets halve into each other', (series) => {
    const numbered = sheetNames.filter((name) => new RegExp(`^${series}\\d$`).test(name)).sort()
    for (const [i, name] of numbered.slice(1).entries()) {
      const [larger, smaller] = [sheetSize(numbered[i] as string), sheetSize(name)]
      expect(smaller?.width.valueOf(), name).toBe(Math.floor((larger?.height.valueOf() ?? 0) / 2))
      expect(smaller?.height.valueOf(), name).toBe(larger?.width.valueOf())
    }
  })

  test('landscape swaps width and height', () => {
    const [a, b] = [sheetSize('A6 landscape'), sheetSize('a6 Portrait')]
    expect(a && b && same(a.width, b.height) && same(a.height, b.width)).toBe(true)
  })

  test('a US envelope name of the same letters is not a sheet', () => expect(sheetSize('A9')).toBeUndefined())
})
