import { describe, expect, test } from 'vitest'
import { foldStyles } from '../../../src/card/fold-styles.ts'
import type { Structure } from '../../../src/card/structure.ts'
import { foldCard } from '../../../src/fold/prove.ts'
import { formatSize } from '../../../src/length/format.ts'
import { cardOf, check, measure } from '../block.ts'
import { troublesOfSheets } from '../sheets.ts'
import { isRefused, sizes, units } from '../sizes.ts'

const closedOf = (structure: Structure) => {
  const { closed, findings } = foldCard(structure)
  expect(findings).toEqual([])
  if (!closed) throw new Error('does not shut')
  return closed
}

/** By hand: what goes away from the spine is now the height. */
test.each([
  ['side', '5 × 14 in', '7 in'],
  ['gate', '5 × 14 in', '3 1/2 and 10 1/2 in'],
  ['letter', '5 × 20 15/16 in', '6 15/16 and 13 15/16 in'],
  ['z', '5 × 14 in', '7 and 10 1/2 in'],
])('a %s card of 5 × 7 with its spine at the top is %s, scored at %s', (fold, size, scores) => {
  const card = cardOf(`fold: ${fold}\nclosed: 5 x 7 in\nspine: top`)
  expect([measure(card, 'base.size'), measure(card, 'base.scores')]).toEqual([size, scores])
  expect(formatSize(closedOf(card.structure).size, 'in')).toBe('5 × 7 in')
})

test('a gate with its spine at the top has an upper and a lower door, and says so to whoever asks for a left one', () => {
  const block = (door: string) =>
    `fold: gate\nclosed: 5 x 7 in\nspine: top\nlayers:\n  a: {on: ${door}, border: 1/8 in}`
  expect(check(block('upper door')).findings).toEqual([])
  expect(check(block('left door')).findings.map((f) => f.rule)).toEqual(['unknown-name'])
})

test('a tongue is half as long as the card goes away from its spine', () => {
  const tongue = (spine: string) =>
    measure(cardOf(`fold: z\nclosed: 5 x 7 in\nspine: ${spine}`), 'tongue.size')
  expect([tongue('left'), tongue('top')]).toEqual(['2 1/2 × 7 in', '5 × 3 1/2 in'])
})

const withSpine = [...foldStyles.values()].filter(({ choices }) => choices?.spine)

describe.each(withSpine)('a $name card with its spine at the top', (style) => {
  test.each(sizes.filter((closed) => !isRefused(style, closed)))(
    'at %s is cut, shuts and stands',
    (closed) => {
      for (const unit of units) {
        const card = cardOf(`fold: ${style.name}\nclosed: ${closed}\nspine: top`, { unit })
        expect(troublesOfSheets(card.structure)).toEqual([])
        const { standing, findings, ...proof } = foldCard(card.structure)
        expect(findings).toEqual([])
        expect(standing).toBeDefined()
        expect(proof.closed && formatSize(proof.closed.size, unit)).toBe(formatSize(card.closed, unit))
      }
    },
  )
})

describe.each(withSpine)('the front of a $name card', (style) => {
  test.each(style.choices?.spine?.words ?? [])('reads the right way up with the spine on the %s', (spine) => {
    const block = `fold: ${style.name}\nclosed: 6 x 6 in\nspine: ${spine}`
    const bare = cardOf(block).structure
    const [front = ''] = closedOf(bare).order
    const laid = closedOf(bare).plates.find(({ plate }) => plate === front)
    const words = laid?.faceUp ? 'inside' : 'outside'
    const border = '{left: 1/8 in, right: 1/4 in, top: 3/8 in, bottom: 1/2 in}'
    const card = cardOf(`${block}\nlayers:\n  picture: {on: ${front}, side: ${words}, border: ${border}}`)
    const closed = closedOf(card.structure)
    const picture = closed.pose.get('picture')
    expect([picture?.right, picture?.up, picture?.normal]).toEqual([
      [1, 0, 0],
      [0, 1, 0],
      [0, 0, 1],
    ])
    // Its borders are where they are said to be, for whoever looks at the front.
    const [panel, own] = [front, 'picture'].map((name) => closed.plates.find(({ plate }) => plate === name))
    if (!panel || !own) throw new Error('not laid')
    expect(own.left.sub(panel.left).equals('3.175')).toBe(true)
    expect(own.bottom.sub(panel.bottom).equals('12.7')).toBe(true)
  })
})
