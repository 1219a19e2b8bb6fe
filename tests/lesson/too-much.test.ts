import { describe, expect, test } from 'vitest'
import { fillLesson } from '../../src/lesson/fill.ts'
import { readLesson } from '../../src/lesson/read.ts'

const start = '# Tide\n\n'

/** What is found in a lesson about its being too much, and how long that took, in ms of this computer's work. */
function tooMuch(text: string) {
  const before = process.cpuUsage()
  const { findings } = fillLesson(readLesson(text))
  const { user } = process.cpuUsage(before)
  return { found: findings.filter(({ rule }) => rule === 'too-much'), took: user / 1000 }
}

/** A text of exactly so many characters, in lines. */
const lines = (length: number): string => {
  const all = start + 'The tide comes in and the boats go out\n\n'.repeat(Math.ceil(length / 40))
  return `${all.slice(0, length - 1)}\n`
}
/** One paragraph of so many characters. */
const paragraph = (length: number, of = 'The tide comes in. '): string =>
  `${start}${of.repeat(length / of.length)}\n`
const nested = (n: number, open: string, close: string): string =>
  `${start}${open.repeat(n)}a${close.repeat(n)}\n`

describe.each<readonly [string, string, string, number]>([
  ['two hundred thousand characters', lines(200_000), lines(200_001), 10_000],
  ['fifty thousand characters without an empty line', paragraph(49_990), paragraph(50_010), 3],
  [
    'many measures in one paragraph',
    paragraph(49_990, '{base.width} '),
    paragraph(260_000, '{base.width} '),
    3,
  ],
  [
    'many loose numbers in one paragraph',
    paragraph(49_990, '5.5 in and '),
    paragraph(260_000, '5.5 in and '),
    3,
  ],
  ['rows of a table', paragraph(49_990, '| a | b |\n'), paragraph(200_010, '| a | b |\n'), 3],
  ['a thousand signs of emphasis in a paragraph', nested(500, '*a ', 'b* '), nested(501, '*a ', 'b* '), 3],
  ['brackets fifty deep', nested(50, '![', '](b)'), nested(51, '![', '](b)'), 3],
  ['far more signs of emphasis', nested(500, '*a ', 'b* '), nested(50_000, '*a ', 'b* '), 3],
  ['far deeper brackets', nested(50, '![', '](b)'), nested(50_000, '![', '](b)'), 3],
])('%s', (_, most, more, line) => {
  test('are read', () => {
    const { found, took } = tooMuch(most)
    expect(found).toEqual([])
    expect(took).toBeLessThan(10_000)
  })

  test('and more are told at their place, with a cure', () => {
    const { found, took } = tooMuch(more)
    expect(found).toMatchObject([{ severity: 'error', suggestion: expect.stringMatching(/^(Make|Close)/) }])
    expect(Math.abs((found[0]?.place?.line ?? 0) - line)).toBeLessThanOrEqual(2)
    expect(took).toBeLessThan(10_000)
  })
})

test('four hundred figures are drawn, and the first that is more is told', () => {
  const figures = (count: number) =>
    `${start}\`\`\`card\nfold: side\nclosed: A6\n\`\`\`\n\n${'::figure[The base]{show=flat of=base}\n\n'.repeat(count)}`
  expect(tooMuch(figures(400)).found).toEqual([])
  const { found } = tooMuch(figures(405))
  expect(found).toMatchObject([{ severity: 'error', place: { line: 8 + 2 * 400, column: 1 } }])
  expect(found[0]?.message).toContain('more than 400 figures')
})

test('what stands before too much is read, and places in it are right', () => {
  const { findings } = fillLesson(readLesson(`${start}A { b.\n\n${'['.repeat(60)}\n`))
  const placeOf = (wanted: string) => findings.find(({ rule }) => rule === wanted)?.place
  expect(placeOf('too-much')).toMatchObject({ line: 4, column: 1 })
  expect(placeOf('open-brace')).toMatchObject({ line: 3, column: 3 })
})

test('signs are counted by paragraph, whatever ends its lines', () => {
  for (const ending of ['\n', '\r\n', '\n \t']) {
    const many = `*a* [b](c)${ending}${ending === '\n \t' ? '\n' : ending}`.repeat(1100)
    expect(tooMuch(`${start}${many}`).found).toEqual([])
  }
})
