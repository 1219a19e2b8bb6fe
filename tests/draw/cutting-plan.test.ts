import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { drawCuttingPlan } from '../../src/draw/cutting-plan/cutting-plan.ts'
import type { SheetPlan } from '../../src/draw/cutting-plan/sheet-plan.ts'
import { inches, type Length, minus, mm, plus, zero } from '../../src/length/length.ts'
import { wordingOf } from '../../src/wording/wording.ts'
import { collisions } from './collide.ts'
import { textsOf } from './figures.ts'
import { byClass } from './svg.ts'

type Placed = SheetPlan['placed'][number]
type Cut = SheetPlan['cuts'][number]

const names = ['base', 'side strip', 'sea wall', 'door panel for the left door', 'tag']

/** A sheet cut at random: each part is a piece, waste, or cut again. */
function cutUp(
  sheet: { width: Length; height: Length },
  choices: readonly number[],
  upright: boolean,
): SheetPlan {
  const placed: Placed[] = []
  const cuts: Cut[] = []
  const left = [...choices]
  const part = (x: Length, y: Length, width: Length, height: Length, depth: number): void => {
    const choice = left.pop() ?? 0
    if (depth === 0 || choice % 7 < 2 || width.lt(40) || height.lt(40)) {
      if (choice % 3 > 0)
        placed.push({ name: names[choice % names.length] ?? '', x, y, width, height, upright })
      return
    }
    const share = 0.2 + (choice % 5) / 8
    if (choice % 2 === 0) {
      const w = mm(Math.round(width.valueOf() * share))
      cuts.push({ across: 'width', at: plus(x, w), from: y, to: plus(y, height) })
      part(x, y, w, height, depth - 1)
      part(plus(x, w), y, minus(width, w), height, depth - 1)
    } else {
      const h = mm(Math.round(height.valueOf() * share))
      cuts.push({ across: 'height', at: plus(y, h), from: x, to: plus(x, width) })
      part(x, y, width, h, depth - 1)
      part(x, plus(y, h), width, minus(height, h), depth - 1)
    }
  }
  part(zero, zero, sheet.width, sheet.height, 4)
  return { stock: 'blue card', sheet, placed, cuts }
}

const half: SheetPlan = {
  stock: 'blue card',
  sheet: { width: inches(12), height: inches(12) },
  placed: [
    { name: 'base', x: zero, y: zero, width: inches(8), height: inches(12), upright: true },
    { name: 'tag', x: inches(8), y: zero, width: inches(1, 2), height: inches(1, 2), upright: false },
  ],
  cuts: [
    { across: 'width', at: inches(8), from: zero, to: inches(12) },
    { across: 'height', at: inches(1, 2), from: inches(8), to: inches(12) },
    { across: 'width', at: inches(17, 2), from: zero, to: inches(1, 2) },
  ],
}

describe('a cutting plan', () => {
  const { svg, alternative } = drawCuttingPlan(half, wordingOf('en', 'in'))
  test('names its pieces, those without room by a letter that is explained', () => {
    expect(textsOf(svg, 'name')).toEqual(expect.arrayContaining(['base', '8 × 12 in', 'up', 'A']))
    expect(textsOf(svg, 'legend')).toEqual(['A: tag, 1/2 × 1/2 in'])
  })
  test('numbers its cuts in their order', () => {
    expect(textsOf(svg, 'cut-number')).toEqual(['1', '2', '3'])
    expect(byClass(svg, 'cut')).toHaveLength(3)
  })
  test('says the same in words', () => {
    expect(alternative).toBe(
      'A sheet of blue card, 12 × 12 in, with 1 × base, 8 × 12 in and 1 × tag, 1/2 × 1/2 in. Cuts in their order: 1 at 8 in from the left edge, 2 at 1/2 in from the lower edge and 3 at 8 1/2 in from the left edge.',
    )
  })
})

test('no name of a piece touches another or a line, however a sheet is cut', () => {
  fc.assert(
    fc.property(
      fc.array(fc.nat(1000), { maxLength: 24 }),
      fc.boolean(),
      fc.boolean(),
      (choices, upright, metric) => {
        const sheet = metric ? { width: mm(210), height: mm(297) } : { width: inches(12), height: inches(12) }
        const { svg } = drawCuttingPlan(
          cutUp(sheet, choices, upright),
          wordingOf('en', metric ? 'mm' : 'in'),
          {
            maxWidth: 120,
            maxHeight: 120,
          },
        )
        // The numbers of cuts stand on their cuts, in boxes of their own.
        const found = collisions(svg).filter((words) => !/^"\d+" touches the line/.test(words))
        expect(found).toEqual([])
      },
    ),
    { numRuns: 400 },
  )
})
