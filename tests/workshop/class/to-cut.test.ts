import { expect, test } from 'vitest'
import { taughtLesson } from '../../../src/workshop/class/taught.ts'
import { toCut } from '../../../src/workshop/class/to-cut.ts'
import { harbour } from '../harbour.ts'

const place = { line: 1, column: 1 }
const choose = (stock: string, takes: Record<string, number>) => ({
  stock,
  place,
  takes: Object.entries(takes).map(([name, people]) => ({ stock: name, people })),
})
const of = (choices: ReturnType<typeof choose>[] = [], people = 14, spare = 2) =>
  taughtLesson({ path: 'a.md', place, choices }, harbour(), { people, spare })

test('every piece is cut for every kit, the envelope too', () => {
  const all = toCut([of().taught])
  expect([...all].map(([stock, list]) => [stock, list.map(({ name, count }) => `${count} ${name}`)])).toEqual(
    [
      ['dark blue card', ['16 base']],
      ['patterned paper', ['32 side strip', '16 backdrop']],
      ['grey card', ['16 sea wall']],
      ['envelope paper', ['16 envelope']],
    ],
  )
})

test('the four upright scores of the base run up its height', () => {
  expect(toCut([of().taught]).get('dark blue card')?.[0]?.scored).toBe('height')
  expect(toCut([of().taught]).get('grey card')?.[0]?.scored).toBeUndefined()
})

// 8 and 6 of 14 people with two spare kits: 16 · 8/14 = 9.14 and 16 · 6/14 = 6.86, so 9 and 7.
test('chosen stocks share the kits, and the spare ones go with them', () => {
  const all = toCut([of([choose('dark blue card', { 'dark blue card': 8, 'dark green card': 6 })]).taught])
  expect(all.get('dark blue card')?.map(({ count }) => count)).toEqual([9])
  expect(all.get('dark green card')?.map(({ count }) => count)).toEqual([7])
})

test('a choice for a stock that the lesson has not is told, with the nearest one', () => {
  expect(of([choose('dark blu card', { a: 14 })]).findings).toMatchObject([
    { rule: 'choices', suggestion: 'Write `dark blue card`' },
  ])
})

test('two lessons of one class are cut from the same stock together', () => {
  const counts = toCut([of().taught, of([], 6, 0).taught])
    .get('grey card')
    ?.map(({ count }) => count)
  expect(counts).toEqual([16, 6])
})
