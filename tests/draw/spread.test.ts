import fc from 'fast-check'
import { expect, test } from 'vitest'
import { spread } from '../../src/draw/spread.ts'

const tags = fc
  .array(fc.record({ at: fc.integer({ min: 0, max: 80 }), width: fc.integer({ min: 2, max: 9 }) }), {
    maxLength: 9,
  })
  .map((list) => list.sort((a, b) => a.at - b.at))

test('numbers that have room stay at their marks', () => {
  const list = [5, 20, 40].map((at) => ({ at, width: 6 }))
  expect(spread(list, 1)).toEqual([5, 20, 40])
})

test('two numbers at nearly one mark move apart evenly', () => {
  const list = [10, 11].map((at) => ({ at, width: 4 }))
  expect(spread(list, 1)).toEqual([8, 13])
})

test('no number comes nearer to the next than it may', () => {
  fc.assert(
    fc.property(tags, (list) => {
      const places = spread(list, 1)
      for (const [i, place] of places.entries()) {
        const [tag, next, after] = [list[i], list[i + 1], places[i + 1]]
        if (tag && next && after !== undefined)
          expect(after - place).toBeGreaterThanOrEqual((tag.width + next.width) / 2 + 1 - 1e-9)
      }
    }),
  )
})

/**
 * The same by another way: pairs that are too near push each other apart, over and over, each time taking back what they
 * pushed before. Dykstra's projections converge to the nearest allowed places (Boyle and Dykstra 1986).
 */
function pushedApart(list: readonly { at: number; width: number }[], clear: number): number[] {
  const places = list.map((tag) => tag.at)
  const pushed = list.map(() => 0)
  for (let round = 0; round < 3000; round++)
    for (let i = 0; i + 1 < list.length; i++) {
      const back = pushed[i] ?? 0
      const [a, b] = [(places[i] ?? 0) + back, (places[i + 1] ?? 0) - back]
      const least = ((list[i]?.width ?? 0) + (list[i + 1]?.width ?? 0)) / 2 + clear
      const push = Math.max(0, least - (b - a)) / 2
      places[i] = a - push
      places[i + 1] = b + push
      pushed[i] = push
    }
  return places
}

test('they move no further than they must', () => {
  fc.assert(
    fc.property(tags, (list) => {
      const other = pushedApart(list, 1)
      for (const [i, place] of spread(list, 1).entries()) expect(place).toBeCloseTo(other[i] ?? 0, 3)
    }),
    { numRuns: 60 },
  )
})
