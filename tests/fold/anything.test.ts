import * as fc from 'fast-check'
import { expect, test } from 'vitest'
import { foldCard } from '../../src/fold/prove.ts'
import { mm, toMm } from '../../src/length/length.ts'
import { card, point, sheet, strip, stuck } from './build.ts'
import { troublesIn } from './checker.ts'
import { layerTroublesIn } from './layer-checker.ts'

const names = ['a', 'b', 'c', 'd', 'e', 'x', 'y', 'u', 'v'] as const
const length = fc.integer({ min: 1, max: 12 }).map((n) => mm(5 * n))
const letters = fc.string({ unit: fc.constantFrom('V', 'M'), minLength: 4, maxLength: 4 })

/** A strip of five panels, another of two, two sheets, and bonds between any of them. */
const anyCard = fc
  .record({
    lengths: fc.array(length, { minLength: 9, maxLength: 9 }),
    folds: fc.tuple(letters, letters),
    along: fc.constantFrom<'width' | 'height'>('width', 'height'),
    plate: fc.constantFrom(...names),
    degrees: fc.integer({ min: 0, max: 180 }),
    raise: fc.constantFrom(0, 2),
    bonds: fc.array(
      fc.record({
        plate: fc.constantFrom(...names),
        onto: fc.constantFrom(...names),
        at: fc.tuple(fc.integer({ min: -12, max: 12 }), fc.integer({ min: -12, max: 12 })),
        side: fc.constantFrom('face', 'back'),
        over: fc.boolean(),
        turn: fc.constantFrom(0, 90, 180, 270),
      }),
      { maxLength: 4 },
    ),
  })
  .map(({ lengths, folds, along, plate, degrees, raise, bonds }) => {
    const at = (i: number) => lengths[i] ?? mm(5)
    const panels = (from: number, to: number) =>
      names.slice(from, to).map((name, i) => [name, at(from + i)] as const)
    return card({
      parts: [
        strip({ panels: panels(0, 5), folds: folds[0], across: mm(20), along }),
        strip({ piece: 'second', panels: panels(5, 7), folds: folds[1], across: mm(15) }),
        sheet('u', at(7), mm(10)),
        sheet('v', at(8), mm(15)),
      ],
      bonds: bonds.map(({ plate: p, onto, at: [x, y], ...rest }) =>
        stuck(p, onto, mm(0), mm(0), { ...rest, at: point(mm(5 * x), mm(5 * y)), height: mm(raise) }),
      ),
      plate,
      angles: [['b', 'c', degrees]],
    })
  })

test('whatever is stuck on whatever, the card is proven or refused, and what is proven holds', () => {
  fc.assert(
    fc.property(anyCard, (structure) => {
      const { closed, between, findings } = foldCard(structure)
      expect(closed !== undefined || findings.length > 0).toBe(true)
      if (!closed) return
      const tolerance = { gap: 1e-5, thickness: toMm(closed.thickness) + 10 }
      expect(troublesIn(structure, closed.pose, tolerance)).toEqual([])
      expect(layerTroublesIn(structure, closed)).toEqual([])
      for (const share of [0.3, 1]) {
        const pose = between(share)
        if (pose) expect(troublesIn(structure, pose, tolerance)).toEqual([])
      }
    }),
    { numRuns: 300 },
  )
})
