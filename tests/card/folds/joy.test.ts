import { expect, test } from 'vitest'
import { foldCard } from '../../../src/fold/prove.ts'
import { formatLength, formatSize } from '../../../src/length/format.ts'
import { cardOf, check, measure } from '../block.ts'

const block = 'fold: joy\nclosed: 5 x 7 in'
const shut = (text: string) => {
  const { closed, findings } = foldCard(cardOf(text).structure)
  expect(findings).toEqual([])
  if (!closed) throw new Error('does not shut')
  return closed
}

test('5 × 7: the base is a gate card, the centre a half inch smaller all round, folded in half', () => {
  const card = cardOf(block)
  expect([measure(card, 'base.size'), measure(card, 'base.scores')]).toEqual([
    '10 × 7 in',
    '2 1/2 and 7 1/2 in',
  ])
  expect([measure(card, 'centre.size'), measure(card, 'centre.scores')]).toEqual(['8 × 6 in', '4 in'])
  expect(measure(card, 'centre front.size')).toBe('4 × 6 in')
})

test.each([
  ['door', ['left door', 'right door', 'centre back', 'centre front', 'back']],
  ['back', ['left door', 'right door', 'centre front', 'centre back', 'back']],
])(
  'stuck on the %s, the centre lies between the doors and the back with its border all round',
  (on, order) => {
    for (const part of ['0 in', '1 in']) {
      const closed = shut(`${block}\non: ${on}\npart: ${part}`)
      expect([formatSize(closed.size, 'in'), closed.order]).toEqual(['5 × 7 in', order])
      for (const name of ['centre front', 'centre back']) {
        const laid = closed.plates.find(({ plate }) => plate === name)
        if (!laid) throw new Error(name)
        expect([laid.left, laid.bottom].map((x) => formatLength(x, 'in'))).toEqual(['1/2 in', '1/2 in'])
        expect(formatSize(laid.size, 'in')).toBe('4 × 6 in')
      }
    }
  },
)

test('on a door the centre goes with it, and leaves the back free', () => {
  const { standing } = foldCard(cardOf(block).structure)
  const normal = (name: string) => standing?.pose.get(name)?.normal.map((x) => Math.round(x * 1e6) / 1e6)
  expect(normal('centre back')).toEqual(normal('left door'))
  expect(normal('centre back')).not.toEqual(normal('back'))
})

const cures = (more: string) => check(`${block}\n${more}`).findings.map(({ suggestion }) => suggestion)

// W - 2·border may be one mark of the ruler at least: 5 in less 1/16 in, halved, goes down to 2 7/16 in.
test('the border keeps the centre off the creases of the doors, and leaves something of it', () => {
  expect(cures('border: 0 in')).toEqual(['Make the border at least 1/16 in'])
  expect(cures('border: 1/16 in')).toEqual([])
  expect(cures('border: 3 in')).toEqual(['Make the border at most 2 7/16 in'])
})
