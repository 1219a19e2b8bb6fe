import fc from 'fast-check'
import { expect, it } from 'vitest'
import { nearChanges } from '../../../src/desk/page/keeping/both-rows.ts'
import { lineChanges, ownWords } from '../../../src/desk/page/keeping/line-changes.ts'

const text = fc
  .array(fc.constantFrom('', 'cut', 'score', 'fold', 'stick'), { maxLength: 14 })
  .map((lines) => lines.join('\n'))

it('each side of the rows is its text, whole and in order, and equal rows are equal', () => {
  fc.assert(
    fc.property(text, text, (mine, theirs) => {
      const rows = lineChanges(mine, theirs)
      const side = (of: 'mine' | 'theirs') => rows.flatMap((row) => row[of] ?? []).join('\n')
      expect(side('mine')).toBe(mine)
      expect(side('theirs')).toBe(theirs)
      for (const row of rows) expect(row.same && row.mine !== row.theirs).toBe(false)
      expect(rows.flatMap((row) => row.mineLine ?? [])).toEqual(mine.split('\n').map((_, i) => i + 1))
    }),
  )
})

it('as many lines stay beside each other as can, compared with trying all', () => {
  const short = fc.array(fc.constantFrom('a', 'b', 'c'), { minLength: 1, maxLength: 7 })
  const all = (lines: readonly string[]): string[][] =>
    lines.reduce<string[][]>((found, line) => found.flatMap((one) => [one, [...one, line]]), [[]])
  fc.assert(
    fc.property(short, short, (mine, theirs) => {
      const own = new Set(all(mine).map((lines) => lines.join('\n')))
      const most = Math.max(
        ...all(theirs)
          .filter((lines) => own.has(lines.join('\n')))
          .map((lines) => lines.length),
      )
      const same = lineChanges(mine.join('\n'), theirs.join('\n')).filter((row) => row.same)
      expect(same.length).toBe(most)
    }),
    { numRuns: 60 },
  )
})

it('a text of many thousand lines is laid beside another quickly', () => {
  const lines = Array.from({ length: 20_000 }, (_, i) => `line ${i}`)
  const other = lines.map((line, i) => (i > 5 && i < 19_990 ? `${line}!` : line))
  expect(lineChanges(lines.join('\n'), other.join('\n')).filter((row) => row.same)).toHaveLength(16)
})

it('a change of words marks the words and nothing else', () => {
  expect(ownWords('Cut the base to 7 in.', 'Cut the mat to 7 in.')).toEqual({
    before: 'Cut the ',
    own: 'base',
    behind: ' to 7 in.',
  })
})

it('long equal stretches are left out, and every difference stays', () => {
  const lines = Array.from({ length: 40 }, (_, i) => `line ${i}`)
  const rows = nearChanges(lineChanges(lines.join('\n'), lines.with(20, 'other').join('\n')))
  expect(rows).toHaveLength(1 + 3 + 1 + 3 + 1)
  expect(rows[0]).toEqual({ left: 17 })
  expect(rows[4]).toMatchObject({ mine: 'line 20', theirs: 'other' })
})
