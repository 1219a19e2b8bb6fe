import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { mm } from '../../../src/length/length.ts'
import { cutByCut } from '../../../src/workshop/cutting/cut-by-cut.ts'
import type { PlacedPiece, TrimmerCut } from '../../../src/workshop/cutting/cutting.ts'
import { planCutting } from '../../../src/workshop/cutting/plan-cutting.ts'

const placed = (piece: string, x: number, y: number, width: number, height: number): PlacedPiece => ({
  piece,
  lesson: 'A',
  x: mm(x),
  y: mm(y),
  width: mm(width),
  height: mm(height),
  turned: false,
})
const cut = (across: 'width' | 'height', at: number, from: number, to: number): TrimmerCut => ({
  across,
  at: mm(at),
  from: mm(from),
  to: mm(to),
  against: across === 'width' ? 'left' : 'bottom',
  set: mm(at),
})

describe('what the hands do at each cut', () => {
  // A sheet of 100 × 100: an upper strip with two tags, below it a base and waste.
  const layout = {
    placed: [placed('base', 0, 0, 80, 60), placed('tag', 0, 60, 50, 40), placed('tag', 50, 60, 50, 40)],
    cuts: [cut('height', 60, 0, 100), cut('width', 80, 0, 60), cut('width', 50, 60, 100)],
  }
  test('finished pieces get a label, a strip that comes later is laid aside and taken up again', () => {
    const steps = cutByCut(layout, { width: mm(100), height: mm(100) })
    expect(
      steps.map(({ takes, turns, finished, aside }) => [takes, turns, finished.map((p) => p.piece), aside]),
    ).toEqual([
      [undefined, false, [], ['r']],
      [undefined, true, ['base'], []],
      ['r', false, ['tag', 'tag'], []],
    ])
  })
  test('a strip that is cut again at once is not laid aside', () => {
    const [first, second] = cutByCut(
      { placed: [placed('base', 0, 0, 80, 60)], cuts: [cut('height', 60, 0, 100), cut('width', 80, 0, 60)] },
      { width: mm(100), height: mm(100) },
    )
    expect([first?.aside, second?.takes]).toEqual([[], undefined])
  })
})

test('every piece is labelled once, and only strips that lie aside are taken up', async () => {
  const side = fc.integer({ min: 20, max: 160 })
  await fc.assert(
    fc.asyncProperty(
      fc.array(fc.tuple(side, side, fc.integer({ min: 1, max: 4 })), { minLength: 1, maxLength: 4 }),
      fc.integer({ min: 0, max: 3 }),
      fc.boolean(),
      async (sizes, gap, trimmed) => {
        const wanted = sizes.map(([width, height, count], i) => ({
          lesson: 'A',
          name: `piece ${i}`,
          stock: 'card',
          size: { width: mm(width), height: mm(height) },
          count,
          turns: true,
        }))
        const size = { width: mm(210), height: mm(297) }
        const sheet = { stock: 'card', size, ...(trimmed && { trim: { left: mm(5), top: mm(3) } }) }
        const { plans } = await planCutting(wanted, [sheet], { gap: mm(gap), effort: 5 })
        for (const { layouts } of plans)
          for (const layout of layouts) {
            const labelled: PlacedPiece[] = []
            const lying = new Set<string>()
            for (const { takes, finished, aside } of cutByCut(layout, size)) {
              if (takes !== undefined) expect(lying.delete(takes)).toBe(true)
              labelled.push(...finished)
              for (const letter of aside) {
                expect(lying.has(letter)).toBe(false)
                lying.add(letter)
              }
            }
            expect([...lying]).toEqual([])
            expect(new Set(labelled).size).toBe(labelled.length)
            expect(labelled.length).toBe(layout.placed.length)
          }
      },
    ),
    { numRuns: 60 },
  )
})

test('a sheet that is used whole has no cuts', () => {
  expect(
    cutByCut({ placed: [placed('base', 0, 0, 9, 9)], cuts: [] }, { width: mm(9), height: mm(9) }),
  ).toEqual([])
})
