import { describe, expect, test } from 'vitest'
import { evaluate, type Value } from '../../src/length/evaluate.ts'
import { ExpressionError } from '../../src/length/expression.ts'
import { formatLength, formatSize } from '../../src/length/format.ts'
import { inches, mm } from '../../src/length/length.ts'
import { parseMeasure } from '../../src/length/parse.ts'
import { readLength, readSize } from '../../src/length/text.ts'

const names: Record<string, Value> = {
  'closed.width': { kind: 'length', value: inches(7) },
  'sea wall.height': { kind: 'length', value: inches(5, 4) },
  'panel 2.width': { kind: 'length', value: mm(40) },
  'base.scores.1': { kind: 'length', value: inches(3, 4) },
  'base.size': { kind: 'size', value: { width: inches(8), height: inches(6) } },
}
const value = (text: string) =>
  evaluate(parseMeasure(text).expression, (path, at) => {
    const found = names[path.join('.')]
    if (found) return found
    throw new ExpressionError('unknown-name', path.join('.'), at)
  })

describe('lengths as teachers write them', () => {
  test.each([
    ['5 7/8 in', '5 7/8 in'],
    ['5⅞"', '5 7/8 in'],
    ['5 ⅞″', '5 7/8 in'],
    ['5-7/8 in', '5 7/8 in'],
    ['5 7⁄8 inches', '5 7/8 in'],
    ['.5in', '1/2 in'],
    ['⅜ inch', '3/8 in'],
    ['14.9 cm', '149 mm'],
    ['149 mm', '149 mm'],
    ['149mm', '149 mm'],
    ['1 ft', '12 in'],
    ['0.3 m', '300 mm'],
    ['(1 + 2) * 3 in', '9 in'],
    ['-1/4 in', '-1/4 in'],
  ])('%s is %s', (text, expected) => {
    expect(formatLength(readLength(text), expected.endsWith('mm') ? 'mm' : 'in')).toBe(expected)
  })

  test.each([
    ['8 x 6 in', '8 × 6 in'],
    ['8x6in', '8 × 6 in'],
    ['8 × 6 in', '8 × 6 in'],
    ['8 in x 6 in', '8 × 6 in'],
    ['8 1/2 x 5 1/2"', '8 1/2 × 5 1/2 in'],
    ['4 ft x 1 in', '48 × 1 in'],
  ])('%s is the size %s', (text, expected) => expect(formatSize(readSize(text), 'in')).toBe(expected))

  test('a named size', () => expect(formatSize(readSize('A6 landscape'), 'mm')).toBe('148 × 105 mm'))
})

describe('measures', () => {
  test.each([
    ['closed.width / 8', '7/8 in'],
    ['closed.width - 1/8 in', '6 7/8 in'],
    ['sea wall.height + 1/4 in', '1 1/2 in'],
    ['2 * sea wall.height', '2 1/2 in'],
    ['panel 2.width + 1 mm', '1.614 in'],
    ['base.scores.1', '3/4 in'],
    ['closed.width-1/8 in', '6 7/8 in'],
  ])('%s is %s', (text, expected) => {
    const v = value(text)
    expect(v.kind === 'length' && formatLength(v.value, 'in')).toBe(expected)
  })

  test('a length over a length is a number', () => {
    const v = value('closed.width / (7/8 in)')
    expect(v.kind === 'number' && v.value.valueOf()).toBe(8)
  })

  test('`as` asks for a unit', () => expect(parseMeasure('base.width as mm').unit).toBe('mm'))
})

describe('mistakes have a rule and a place', () => {
  test.each([
    ['5 7/8', 'no-unit', 0, 5],
    ['3 / 4 in', 'dimension', 0, 8],
    ['closed.width + 1', 'dimension', 0, 16],
    ['closed.width * closed.width', 'dimension', 0, 27],
    ['closed.width / 0', 'expression', 15, 16],
    ['closed.widht', 'unknown-name', 0, 12],
    ['1 in + ', 'expression', 7, 7],
    ['(1 in', 'expression', 5, 5],
    ['3 in total', 'expression', 5, 10],
    ['2 foo', 'expression', 2, 5],
    ['closed.', 'expression', 7, 7],
    ['base.width as km', 'unit', 14, 16],
    ['', 'expression', 0, 0],
    ['#', 'expression', 0, 1],
    [`${'('.repeat(60)}1 in${')'.repeat(60)}`, 'expression', 51, 52],
  ])('%s', (text, rule, start, end) => {
    const error = thrown(() => {
      const v = value(text)
      if (v.kind !== 'length') readLength(text)
    })
    expect([error?.rule, error?.start, error?.end]).toEqual([rule, start, end])
  })

  test('an unknown size names the standard ones', () => {
    expect(thrown(() => readSize('A99 portrait'))?.suggestion).toContain('A6')
  })
})

function thrown(run: () => unknown): ExpressionError | undefined {
  try {
    run()
    return undefined
  } catch (error) {
    if (error instanceof ExpressionError) return error
    throw error
  }
}
