import { expect, test } from 'vitest'
import { nearest } from '../../src/length/grid.ts'
import { mm, numberIn } from '../../src/length/length.ts'
import { readLength } from '../../src/length/text.ts'
import { cardOf, measure } from '../card/block.ts'
import data from '../data/units.json' with { type: 'json' }

/** A number that is converted when it is finished, to the nearest millimetre. */
const converted = (inch: string): number => numberIn(nearest(readLength(`${inch} in`), mm(1)), 'mm')

/** A card of two panels, as its handout gives it in millimetres. */
function metric(one: string, other: string): { one: number; other: number; whole: number; score: number } {
  const card = cardOf(
    `fold: free
closed: ${other} x 5 in
panels: {one: ${one} in, other: ${other} in}
creases: [valley]
base: {weight: 250 gsm}`,
    { unit: 'mm' },
  )
  const read = (name: string): number => Number(/^(\d+) mm$/.exec(measure(card, name))?.[1])
  return {
    one: read('one.width'),
    other: read('other.width'),
    whole: read('base.width'),
    score: read('base.scores.1'),
  }
}

test.each(data.sums)(
  '$id',
  ({ inch: [one = '', other = '', sum = ''], exact_mm, each_rounded_to_1mm, rounded_parts_add_up }) => {
    // Converting each finished number: published, and what the parts of it come to.
    expect([one, other, sum].map((text) => numberIn(readLength(`${text} in`), 'mm'))).toEqual(exact_mm)
    const each = [one, other, sum].map(converted)
    expect(each).toEqual(each_rounded_to_1mm)
    expect((each[0] ?? 0) + (each[1] ?? 0) === each[2]).toBe(rounded_parts_add_up)
    // The card that is made again in millimetres: its panels come to its sheet, and its score is where they meet.
    const card = metric(one, other)
    expect(card.one + card.other).toBe(card.whole)
    expect(card.score).toBe(card.one)
    expect(
      [card.one, card.other].map((x, i) => x <= (exact_mm[i] ?? 0) && x > (exact_mm[i] ?? 0) - 1),
    ).toEqual([true, true])
  },
)

test('one of the sums does not add up when its numbers are converted', () => {
  expect(data.sums.map((sum) => sum.rounded_parts_add_up)).toContain(false)
})
