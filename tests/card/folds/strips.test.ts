import { describe, expect, test } from 'vitest'
import { foldCard } from '../../../src/fold/prove.ts'
import { formatSize } from '../../../src/length/format.ts'
import { mm } from '../../../src/length/length.ts'
import { card as bare, strip } from '../../fold/build.ts'
import { cardOf, check, measure } from '../block.ts'

const shut = (block: string) => {
  const { closed, findings } = foldCard(cardOf(block).structure)
  expect(findings).toEqual([])
  return { size: closed && formatSize(closed.size, 'in'), order: closed?.order, plates: closed?.plates }
}
const cures = (block: string) => check(block).findings.map(({ suggestion }) => suggestion)

describe('double gate', () => {
  const block = 'fold: double gate\nclosed: 5 x 7 in'

  test('5 × 7: doors of 4 15/16, twice 5 between them, all valleys', () => {
    const card = cardOf(block)
    expect(measure(card, 'base.size')).toBe('19 7/8 × 7 in')
    expect(measure(card, 'base.valleys')).toBe('4 15/16, 9 15/16 and 14 15/16 in')
    expect(measure(card, 'base.mountains')).toBe('none')
  })

  test('shut, both doors are inside', () => {
    const { size, order } = shut(block)
    expect([size, order]).toEqual(['5 × 7 in', ['cover', 'left door', 'right door', 'back']])
    expect(shut(`${block}\nspine: top`).order).toEqual(['cover', 'upper door', 'lower door', 'back'])
  })

  test('doors that pass the spine cannot be folded in', () => {
    const folded = (door: number) => {
      const panels = [
        ['left door', mm(door)],
        ['cover', mm(50)],
        ['back', mm(50)],
        ['right door', mm(door)],
      ] as const
      return foldCard(bare({ parts: [strip({ panels, folds: 'VVV', across: mm(40) })], plate: 'back' }))
    }
    expect(folded(49).findings).toEqual([])
    expect(folded(51).findings.map(({ rule }) => rule)).toEqual(['layers-cross'])
  })

  // Two sheets of 1 mm lie in the spine: 2 mm, which a ruler in sixteenths covers with 1/8 in.
  test('thick card wants more creep', () => {
    const thick = `${block}\nbase: {caliper: 1 mm}`
    expect(cures(thick)).toEqual(['Make the creep at least 1/8 in'])
    expect(cures(`${thick}\ncreep: 1/8 in`)).toEqual([])
    expect(cures(`${block}\ncreep: 5 in`)).toEqual(['Make the creep at most 4 15/16 in; 1/16 in is usual'])
  })
})

describe('accordion', () => {
  const block = (panels: number) => `fold: accordion\nclosed: 4 x 6 in\npanels: ${panels}`

  test('four panels of 4 × 6 are a strip of 16 × 6, with a mountain between two valleys', () => {
    const card = cardOf('fold: accordion\nclosed: 4 x 6 in')
    expect([
      measure(card, 'base.size'),
      measure(card, 'base.valleys'),
      measure(card, 'base.mountains'),
    ]).toEqual(['16 × 6 in', '4 and 12 in', '8 in'])
  })

  test.each([2, 3, 4, 7, 12])('of %i panels the outside of the first is in front', (panels) => {
    const { size, order, plates } = shut(block(panels))
    expect(size).toBe('4 × 6 in')
    expect(order).toEqual(Array.from({ length: panels }, (_, i) => `panel ${i + 1}`))
    expect(plates?.find(({ plate }) => plate === 'panel 1')?.faceUp).toBe(false)
  })

  test('a panel that it does not have is an unknown name; more than twelve are too many', () => {
    const layer = 'layers:\n  a: {on: panel 5, border: 1/8 in}'
    expect(check(`${block(4)}\n${layer}`).findings.map(({ rule }) => rule)).toEqual(['unknown-name'])
    expect(check(`${block(5)}\n${layer}`).findings).toEqual([])
    expect(check(block(13)).findings.map(({ message }) => message)).toEqual([
      '`panels` wants a whole number from 2 to 12',
    ])
  })
})
