import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { readClass } from '../../../src/workshop/class/read-class.ts'
import { seatingOf } from '../../../src/workshop/class/seating.ts'

const read = (text: string) => readClass(`lesson: a.md\n${text}`)
const seats = (text: string) => {
  const { file, findings } = read(text)
  expect(findings).toEqual([])
  return seatingOf(file).map(({ table, people }) => [
    table.name,
    ...people.map((i) => file.guests[i]?.name ?? i),
  ])
}

test('14 people at 4 tables are 4, 4, 3 and 3, one after the other', () => {
  expect(seats('people: 14\ntables: 4')).toEqual([
    ['table 1', 0, 1, 2, 3],
    ['table 2', 4, 5, 6, 7],
    ['table 3', 8, 9, 10],
    ['table 4', 11, 12, 13],
  ])
})

test('seats set a limit, and the others take more', () => {
  expect(
    seats('people: 9\ntables: {stove: 2, window: 6, door: 3}').map(([name, ...at]) => [name, at.length]),
  ).toEqual([
    ['stove', 2],
    ['window', 4],
    ['door', 3],
  ])
})

test('who wants a table sits there, and the tables are still even', () => {
  expect(
    seats(
      'people: [Ada, Bo, {name: Cy, table: door}, Dee, {name: Eli, table: door}, Fay]\ntables: [window, {name: door, seats: 3}]',
    ),
  ).toEqual([
    ['window', 'Ada', 'Bo', 'Dee'],
    ['door', 'Cy', 'Eli', 'Fay'],
  ])
})

test('a table where nobody sits is left out', () => {
  expect(seats('people: 2\ntables: 3')).toHaveLength(2)
})

test('everybody has one seat, no table has more than it has seats, and free seats are shared evenly', () => {
  fc.assert(
    fc.property(
      fc.array(fc.integer({ min: 1, max: 9 }), { minLength: 1, maxLength: 8 }),
      fc.nat(),
      (sizes, n) => {
        const people = 1 + (n % sizes.reduce((a, b) => a + b, 0))
        const { file } = read(
          `people: ${people}\ntables: {${sizes.map((size, i) => `t${i}: ${size}`).join(', ')}}`,
        )
        const seated = seatingOf(file)
        expect(seated.flatMap((one) => one.people)).toEqual(Array.from({ length: people }, (_, i) => i))
        const counts = sizes.map(
          (_, i) => seated.find(({ table }) => table.name === `t${i}`)?.people.length ?? 0,
        )
        for (const [i, count] of counts.entries()) {
          expect(count).toBeLessThanOrEqual(sizes[i] ?? 0)
          // Nobody could move to a table that is emptier by two.
          for (const [j, other] of counts.entries())
            if (other < (sizes[j] ?? 0)) expect(count - other).toBeLessThanOrEqual(1)
        }
      },
    ),
    { numRuns: 60 },
  )
})

describe('what is wrong with tables is told with a cure', () => {
  test.each([
    [
      'people: 9\ntables: {stove: 2, window: 6}',
      '3:10 seats: 9 people come, and the tables have 8 seats',
      'Add 1 seat, or another table',
    ],
    [
      'people: [{name: Ada, table: dor}]\ntables: [door, window]',
      '2:29 seats: There is no table `dor`',
      'Write `door`',
    ],
    [
      'people: [{name: Ada, table: door}]',
      '2:29 seats: There is no table `door`',
      'Add it, such as `tables: [door]`',
    ],
    [
      'people: [{name: Ada, table: door}, {name: Bo, table: door}]\ntables: {door: 1, window: 5}',
      '3:10 seats: 2 people want to sit at `door`, which has 1 seat',
      'Give it 2 seats, or seat somebody elsewhere',
    ],
    [
      'people: 3\ntables: [door, door]',
      '3:16 value: There is a table `door` already',
      'Give each table a name of its own',
    ],
    [
      'people: 3\ntables: many',
      '3:9 value: `many` is no number of `tables`',
      'Write a whole number from 1 up, such as `tables: 12`',
    ],
    ['people: 3\ntables: [{seats: 3}]', '3:10 missing-key: This table has no name', 'Add `name:`'],
  ])('%j', (text, message, cure) => {
    const { findings } = read(text)
    expect(
      findings.map((f) => [`${f.place?.line}:${f.place?.column} ${f.rule}: ${f.message}`, f.suggestion]),
    ).toEqual([[message, cure]])
  })
})
