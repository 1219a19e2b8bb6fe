import fc from 'fast-check'
import { expect, test } from 'vitest'
import { fillLesson } from '../../src/lesson/fill.ts'
import { readLesson } from '../../src/lesson/read.ts'
import { lineAndColumn } from './line-and-column.ts'

const pieces = [
  '---\n',
  'title: x\n',
  'units: mm\n',
  'sizes: [A6, 7 x]\n',
  '```card\n',
  '```card box\n',
  '```supplies\n',
  '```\n',
  'fold: side\n',
  'closed: 5 x 5 in\n',
  'each: {glue: 1 per 0}\n',
  '{base.size}',
  '{base.',
  '}',
  '{',
  '\\',
  ':minutes[5]',
  ':minutes[x]',
  ':minuts[',
  '::figure[a {b.c}]{show=flat of=base}\n',
  '::figure{show=',
  ':::tip\n',
  '::::caution[x]\n',
  ':::\n',
  '::::\n',
  '1. ',
  '- ',
  '> ',
  '    ',
  '\n',
  '\n\n',
  '\r\n',
  '\r',
  '\t',
  '\0',
  '\ufeff',
  '# ',
  '| a |\n| - |\n',
  '![{a}](b)',
  '*',
  '`',
]

const anything = fc.oneof(
  fc.array(fc.constantFrom(...pieces), { maxLength: 40 }).map((parts) => parts.join('')),
  fc.string({ unit: 'binary', maxLength: 200 }),
)

test('nothing crashes, and every finding lies within the file', () => {
  fc.assert(
    fc.property(anything, (text) => {
      const { findings } = fillLesson(readLesson(text))
      for (const { place, rule } of findings) {
        if (!place) continue
        const { line, column, offset = 0, end = offset } = place
        expect([rule, 0 <= offset && offset <= end && end <= text.length]).toEqual([rule, true])
        expect([rule, line, column]).toEqual([rule, ...lineAndColumn(text, offset)])
      }
    }),
    { numRuns: 1000 },
  )
})

test('findings come in the order of the file', () => {
  fc.assert(
    fc.property(anything, (text) => {
      const places = fillLesson(readLesson(text)).findings.flatMap(({ place }) =>
        place ? [place.offset ?? 0] : [],
      )
      expect(places).toEqual([...places].sort((a, b) => a - b))
    }),
    { numRuns: 200 },
  )
})
