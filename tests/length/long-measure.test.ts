import { expect, test } from 'vitest'
import { parseMeasure } from '../../src/length/parse.ts'
import { fillLesson } from '../../src/lesson/fill.ts'
import { readLesson } from '../../src/lesson/read.ts'

test('a sum of a thousand characters is read, and one more is too many', () => {
  const sum = `${'1 + '.repeat(249)}1 in`.padEnd(1000)
  expect(parseMeasure(sum).expression.kind).toBe('binary')
  expect(() => parseMeasure(`${sum} `)).toThrow('This measure is 1001 characters long, and 1000 is the most')
})

test('a measure without end is told at its place, and soon', () => {
  const { findings } = fillLesson(readLesson(`1. Cut it.\n2. Cut it to {${'1. '.repeat(5000)}}.\n`))
  expect(findings.filter(({ rule }) => rule === 'expression')).toMatchObject([
    { message: expect.stringContaining('characters long'), place: { line: 2 } },
  ])
}, 5000)
