import fc from 'fast-check'
import Fraction from 'fraction.js'
import { expect, test } from 'vitest'
import { planCutting } from '../../../src/workshop/cutting/plan-cutting.ts'
import { comesOut, type Rect } from '../fit/cutting-brute.ts'
import { piece, sheet } from './asked.ts'
import { mistakesIn } from './checker.ts'

type Sides = readonly [number, number]

const side = fc.integer({ min: 1, max: 7 })
const rectsOf = (long: typeof side, most: number) =>
  fc.array(fc.record({ width: long, height: long, turns: fc.boolean() }), { minLength: 1, maxLength: most })
const area = fc.tuple(fc.integer({ min: 7, max: 11 }), fc.integer({ min: 7, max: 11 }))
const wanted = (list: readonly Rect[]) =>
  list.map((r, i) => piece(`piece ${i}`, r.width, r.height, 1, { turns: r.turns }))
const many = (sides: Sides, count: number): Sides[] => Array.from({ length: count }, () => sides)

test('a limited size and offcuts: short only when nothing else goes, and as few sheets as there can be', async () => {
  const seen = { short: 0, offcut: 0 }
  await fc.assert(
    fc.asyncProperty(
      rectsOf(fc.integer({ min: 4, max: 7 }), 6),
      area,
      area,
      fc.constantFrom(0, 1),
      fc.constantFrom(0, 1, 1),
      async (list, a, b, limit, offcuts) => {
        const pieces = wanted(list)
        const sheets = [
          sheet(...a, limit > 0 ? { limit } : {}),
          sheet(...b, offcuts > 0 ? { offcut: true, limit: offcuts, have: offcuts } : {}),
        ]
        const plan = await planCutting(pieces, sheets)
        expect(mistakesIn(plan, pieces, sheets)).toEqual([])
        // By trying all: so many of the first size, and of the second as sheets or as offcuts.
        const most = limit > 0 ? limit : list.length
        const ways = Array.from({ length: list.length + 1 }, (_, total) =>
          Array.from({ length: Math.min(total, most) + 1 }, (_, first) => ({ total, first })),
        )
        const least = ways
          .flat()
          .filter(({ total, first }) => offcuts === 0 || total === first)
          .find(({ total, first }) =>
            comesOut(list, [...many(a, first), ...many(b, offcuts || total - first)]),
          )
        expect(plan.short.length > 0).toBe(least === undefined)
        if (plan.short.length > 0) seen.short++
        if (plan.plans.some((one) => one.sheet.offcut)) seen.offcut++
        if (!least) return
        const counted = plan.plans.filter((one) => !one.sheet.offcut)
        expect(counted.reduce((sum, { used }) => sum + used, 0)).toBe(least.total)
        expect(plan.plans.every(({ proven }) => proven)).toBe(true)
      },
    ),
    { numRuns: 80 },
  )
  expect(Math.min(seen.short, seen.offcut)).toBeGreaterThan(3)
})

test('of plans with fewest sheets the one that costs least', async () => {
  let mixed = 0
  await fc.assert(
    fc.asyncProperty(
      rectsOf(side, 6),
      area,
      area,
      fc.nat(4),
      fc.nat(4),
      fc.nat(2),
      async (list, a, b, p, q, have) => {
        const pieces = wanted(list)
        const sheets = [
          sheet(...a, { price: new Fraction(p, 4), have }),
          sheet(...b, { price: new Fraction(q, 4) }),
        ]
        const plan = await planCutting(pieces, sheets)
        expect(mistakesIn(plan, pieces, sheets)).toEqual([])
        const cost = (first: number, second: number): number => p * Math.max(0, first - have) + q * second
        let total = 0
        let costs: number[] = []
        while (costs.length === 0) {
          total++
          costs = Array.from({ length: total + 1 }, (_, first) => first).flatMap((first) =>
            comesOut(list, [...many(a, first), ...many(b, total - first)])
              ? [cost(first, total - first)]
              : [],
          )
        }
        const used = sheets.map((one) => plan.plans.find((own) => own.sheet === one)?.used ?? 0)
        expect(used.reduce((sum, n) => sum + n, 0)).toBe(total)
        expect(cost(used[0] ?? 0, used[1] ?? 0)).toBe(Math.min(...costs))
        expect(plan.plans.every(({ proven }) => proven)).toBe(true)
        if (new Set(costs).size > 1) mixed++
      },
    ),
    { numRuns: 60 },
  )
  expect(mixed).toBeGreaterThan(5)
})
