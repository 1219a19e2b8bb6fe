import { expect, test } from 'vitest'
import type { Structure } from '../../../src/card/structure.ts'
import { foldCard } from '../../../src/fold/prove.ts'
import { toMm } from '../../../src/length/length.ts'
import { inSpace } from '../../fold/checker.ts'
import { cardOf, check, measure } from '../block.ts'
import { placeOn, pulled, shut } from './pulled.ts'

const block = `fold: waterfall
closed: 110 x 150 mm
panel: 50 mm
step: 20 mm
grip: 15 mm
glue: 12 mm
gap: 2 mm`
const structure = cardOf(block, { unit: 'mm' }).structure

test('the strip has four bands and a tab as long as the cascade and the grip', () => {
  const card = cardOf(block, { unit: 'mm' })
  // The turn is at 15 + 50 + 3 × 20 = 125 above the lower edge; the bands are 4 × 20.
  expect(measure(card, 'strip.size')).toBe('50 × 205 mm')
  expect(measure(card, 'strip.scores')).toBe('20, 40, 60 and 80 mm')
  expect(measure(card, 'strip.mountains')).toBe('20, 40, 60 and 80 mm')
  expect(measure(card, 'panel.count')).toBe('4')
  expect(measure(card, 'bar.size')).toBe('78 × 20 mm')
})

test('shut, each panel shows by a step below the one above it, and the tab by the grip', () => {
  const closed = shut(structure)
  expect([closed.size.width, closed.size.height].map(Number)).toEqual([110, 150])
  for (const k of [1, 2, 3, 4]) {
    const top = 125 - (k - 1) * 20
    expect(placeOn(closed, `panel ${k}`, 'front')).toEqual([30, top - 50, 80, top])
  }
  expect(placeOn(closed, 'tab', 'front')).toEqual([30, 0, 80, 125])
  expect(placeOn(closed, 'bar', 'front')).toEqual([16, 105, 94, 125])
  const inFront = ['panel 1', 'panel 2', 'panel 3', 'panel 4', 'band 4', 'tab', 'front', 'back']
  expect(closed.order.filter((name) => inFront.includes(name))).toEqual(inFront)
})

/** Pulled out: the tab has drawn the first three bands over the bar, and the fourth hangs in front of it. */
function pulledOut(): Structure {
  const out = pulled(structure)
  return {
    ...out,
    // The bar is left out: its ends only are glued, and what the strip draws down behind it lies between.
    plates: out.plates.filter(({ name }) => name !== 'bar'),
    bonds: out.bonds.filter(({ plate }) => plate !== 'bar'),
    shut: (out.shut ?? []).map(({ hinge }) => ({ hinge, degrees: hinge.includes('band 4') ? 180 : 0 })),
  }
}

test('pulled by three steps, the last panel hangs where the first has hung, and the tab is out by as much', () => {
  const closed = shut(pulledOut())
  expect(placeOn(closed, 'panel 4', 'front')).toEqual(placeOn(shut(structure), 'panel 1', 'front'))
  expect(placeOn(closed, 'tab', 'front')).toEqual([30, -60, 80, 65])
  expect(closed.order.indexOf('panel 4')).toBeLessThan(closed.order.indexOf('band 1'))
})

test('standing, the strip still lies round the bar', () => {
  const { standing } = foldCard(structure)
  const front = standing?.pose.get('front')
  if (!standing || !front) throw new Error('The card stands')
  const [x, y, z] = front.normal
  // From the outside of the front, along its normal.
  const height = (name: string): number => {
    const at = standing.pose.get(name)
    if (!at) throw new Error(`no plate ${name}`)
    const spot = inSpace(at, [0, 0])
    const from = inSpace(front, [0, 0])
    return -((spot[0] - from[0]) * x + (spot[1] - from[1]) * y + (spot[2] - from[2]) * z)
  }
  const caliper = toMm(structure.pieces[0]?.stock.caliper ?? ({} as never))
  const heights = ['front', 'tab', 'bar', 'band 1', 'panel 1'].map(height)
  for (const [i, at] of heights.entries())
    if (i > 0) expect(at - (heights[i - 1] ?? 0)).toBeGreaterThan(0.99 * caliper)
})

test('a cascade that is higher than the card is refused with the panel that fits', () => {
  const { findings } = check(`${block}\npanels: 5`.replace('panel: 50', 'panel: 60'), { unit: 'mm' })
  // 15 + 60 + 4 × 20 = 155 on a card 150 high.
  expect(findings.map(({ rule, message, suggestion }) => [rule, message, suggestion])).toEqual([
    [
      'impossible-size',
      expect.stringContaining('it would be 155 mm high'),
      'Make the panel at most 55 mm, or take fewer',
    ],
  ])
})
