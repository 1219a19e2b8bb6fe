import fc from 'fast-check'
import Fraction from 'fraction.js'
import { describe, expect, test } from 'vitest'
import { inches, mm } from '../../../src/length/length.ts'
import { sheetsJson } from '../../../src/workshop/class/sheets-json.ts'
import type {
  CuttingOptions,
  CuttingPlan,
  OfferedSheet,
  Progress,
  WantedPiece,
} from '../../../src/workshop/cutting/cutting.ts'
import { planCutting } from '../../../src/workshop/cutting/plan-cutting.ts'
import { comesOut } from '../fit/cutting-brute.ts'
import { piece, piecesOf, sheet, size } from './asked.ts'
import { mistakesIn } from './checker.ts'

/** Plans, and has the plan checked. */
async function plan(
  pieces: readonly WantedPiece[],
  sheets: readonly OfferedSheet[],
  options: CuttingOptions = {},
): Promise<CuttingPlan> {
  const planned = await planCutting(pieces, sheets, options)
  expect(mistakesIn(planned, pieces, sheets, options.gap)).toEqual([])
  return planned
}

const usedIn = ({ plans }: CuttingPlan): number[] => plans.map(({ used }) => used)
const settingsIn = ({ plans }: CuttingPlan): string[] => [
  ...new Set(
    plans.flatMap(({ layouts }) => layouts.flatMap(({ cuts }) => cuts.map(({ set }) => set.toFraction()))),
  ),
]

describe('small plans against trying every cut', () => {
  const side = fc.integer({ min: 1, max: 7 })
  const rects = fc.array(fc.record({ width: side, height: side, turns: fc.boolean() }), {
    minLength: 1,
    maxLength: 6,
  })
  const area = fc.tuple(fc.integer({ min: 7, max: 11 }), fc.integer({ min: 7, max: 11 }))

  test('as few sheets as there can be, and proven', async () => {
    const seen = new Map<number, number>()
    await fc.assert(
      fc.asyncProperty(rects, area, async (list, [w, h]) => {
        const pieces = list.map((r, i) => piece(`piece ${i}`, r.width, r.height, 1, { turns: r.turns }))
        let least = 1
        while (
          !comesOut(
            list,
            Array.from({ length: least }, () => [w, h] as const),
          )
        )
          least++
        const { plans } = await plan(pieces, [sheet(w, h)])
        expect(plans).toMatchObject([{ used: least, lowerBound: least, proven: true }])
        seen.set(least, (seen.get(least) ?? 0) + 1)
      }),
      { numRuns: 60 },
    )
    expect(Math.min(seen.get(1) ?? 0, seen.get(2) ?? 0)).toBeGreaterThan(3)
  })

  test('what a single sheet is too small for is short, and only then', async () => {
    const seen = { all: 0, some: 0 }
    await fc.assert(
      fc.asyncProperty(rects, area, async (list, [w, h]) => {
        const pieces = list.map((r, i) => piece(`piece ${i}`, r.width, r.height, 1, { turns: r.turns }))
        const { short } = await plan(pieces, [sheet(w, h, { limit: 1 })])
        const out = comesOut(list, [[w, h]])
        expect(short.length === 0).toBe(out)
        seen[out ? 'all' : 'some']++
      }),
      { numRuns: 60 },
    )
    expect(Math.min(seen.all, seen.some)).toBeGreaterThan(3)
  })

  test('with a gap, the same as with pieces and sheet larger by it', async () => {
    await fc.assert(
      fc.asyncProperty(rects, area, fc.integer({ min: 1, max: 3 }), async (list, [w, h], tenths) => {
        const fits = list.filter((r) => r.width <= w && r.height <= h)
        if (fits.length === 0) return
        const asked = (more: number) =>
          fits.map((r, i) =>
            piece(`piece ${i}`, r.width * 10 + more, r.height * 10 + more, 2, { turns: r.turns }),
          )
        const lost = await plan(asked(0), [sheet(w * 10, h * 10)], { gap: mm(tenths) })
        const larger = await plan(asked(tenths), [sheet(w * 10 + tenths, h * 10 + tenths)])
        expect(usedIn(lost)).toEqual(usedIn(larger))
      }),
      { numRuns: 25 },
    )
  })
})

describe('several sizes of sheets', () => {
  const cards = [piece('card', 100, 150, 8)]

  test('fewest sheets first, whatever they cost; then least money', async () => {
    const large = sheet(300, 200, { price: new Fraction(9) })
    const small = sheet(100, 150, { price: new Fraction(1, 10) })
    expect(
      (await plan(cards, [small, large])).plans.map(({ sheet: s, used }) => [s.price?.valueOf(), used]),
    ).toEqual([[9, 2]])
    // Nine cards take three sheets in either case, and the third may be the cheap one.
    const nine = await plan([piece('card', 100, 150, 9)], [large, small])
    expect(nine.plans.map(({ sheet: s, used }) => [s.price?.valueOf(), used])).toEqual([
      [9, 2],
      [0.1, 1],
    ])
    expect(nine.plans.every(({ proven }) => proven)).toBe(true)
  })

  test('sheets that are there already cost nothing', async () => {
    const there = sheet(200, 300, { price: new Fraction(5), have: 1 })
    const cheap = sheet(201, 300, { price: new Fraction(1) })
    const { plans } = await plan(cards, [there, cheap])
    expect(plans.map(({ sheet: s, used }) => [s.size.width.valueOf(), used])).toEqual([
      [200, 1],
      [201, 1],
    ])
  })

  test('offcuts are used before new sheets, and are not counted', async () => {
    const offcut = sheet(150, 101, { offcut: true, have: 2, limit: 2 })
    const { plans } = await plan([piece('card', 100, 150, 10)], [sheet(300, 200), offcut])
    expect(plans.map(({ sheet: s, used, lowerBound }) => [s.offcut ?? false, used, lowerBound])).toEqual([
      [false, 2, 2],
      [true, 2, 0],
    ])
  })

  test('an offcut that saves no sheet may stay where it is', async () => {
    const { plans } = await plan(cards, [sheet(300, 200), sheet(20, 20, { offcut: true, limit: 3, have: 3 })])
    expect(usedIn({ plans, short: [] })).toEqual([2])
  })
})

describe('what the paper asks for', () => {
  test('a pattern with a top is not turned, whether the piece or the sheet says so', async () => {
    expect(usedIn(await plan([piece('card', 5, 7, 6)], [sheet(12, 12)]))).toEqual([2])
    expect(usedIn(await plan([piece('card', 5, 7, 6, { turns: false })], [sheet(12, 12)]))).toEqual([3])
    expect(usedIn(await plan([piece('card', 5, 7, 6)], [sheet(12, 12, { upright: true })]))).toEqual([3])
  })

  test('fibres run along the side that they should', async () => {
    const along = (grain: 'width' | 'height') => [piece('base', 8, 5, 4, { grain })]
    // 8 × 5 goes twice on 10 × 8 lying, and not at all standing beside another.
    expect(usedIn(await plan(along('width'), [sheet(8, 10, { grain: 'width' })]))).toEqual([2])
    expect(usedIn(await plan(along('height'), [sheet(8, 10, { grain: 'width' })]))).toEqual([4])
    expect(usedIn(await plan(along('height'), [sheet(8, 10)]))).toEqual([2])
  })

  test('deckle edges come off first, and count for no piece', async () => {
    const trim = { left: mm(1), top: mm(2) }
    const { plans } = await plan([piece('card', 5, 4, 4)], [sheet(11, 10, { trim })])
    expect(plans[0]).toMatchObject({ used: 1, proven: true })
    expect(plans[0]?.layouts[0]?.cuts.slice(0, 2)).toMatchObject([
      { across: 'width', against: 'right' },
      { across: 'height', against: 'bottom' },
    ])
    expect(
      usedIn(await plan([piece('card', 5, 4, 4)], [sheet(11, 10, { trim: { ...trim, right: mm(1) } })])),
    ).toEqual([2])
    // The knife takes its gap from the edge that is trimmed.
    expect(usedIn(await plan([piece('card', 10, 8, 1)], [sheet(11, 10, { trim })], { gap: mm(1) }))).toEqual([
      1,
    ])
  })

  test('each stock is planned by itself, in the order in which they are first wanted', async () => {
    const { plans } = await plan(
      [piece('a', 5, 5, 1), piece('b', 5, 5, 1, { stock: 'vellum' }), piece('c', 5, 5, 1)],
      [sheet(10, 10, { stock: 'vellum' }), sheet(10, 10)],
    )
    expect(plans.map(({ stock, used }) => [stock, used])).toEqual([
      ['card', 1],
      ['vellum', 1],
    ])
  })
})

describe('what cannot be cut', () => {
  test.each([
    [
      'no sheet of the stock',
      piece('beam', 5, 5, 3, { stock: 'vellum' }),
      /no sheet of `vellum`/,
      /at least 5 × 5 mm/,
    ],
    ['too large', piece('beam', 13, 5, 3), /larger than every sheet/, /at least 13 × 5 mm/],
    ['direction', piece('beam', 5, 11, 3, { turns: false }), /only when it is turned/, /without direction/],
    ['fibres', piece('beam', 11, 9, 3, { grain: 'height' }), /fibres must run along its height/, /other way/],
  ])('%s', async (_, asked, why, suggestion) => {
    const { plans, short } = await plan([asked], [sheet(12, 10, { grain: 'width' })])
    expect(plans).toEqual([])
    expect(short).toMatchObject([{ piece: 'beam', count: 3 }])
    expect(short[0]?.why).toMatch(why)
    expect(short[0]?.suggestion).toMatch(suggestion)
  })

  test('too few sheets: as many as can be, and how many more would do', async () => {
    const { plans, short } = await plan([piece('card', 4, 6, 20)], [sheet(12, 12, { limit: 2 })])
    expect(usedIn({ plans, short })).toEqual([2])
    expect(short).toMatchObject([{ piece: 'card', count: 8, suggestion: 'Get 2 more sheets of 12 × 12 mm' }])
  })

  test('the others are planned nevertheless', async () => {
    const { plans, short } = await plan([piece('card', 4, 6, 6), piece('wide', 13, 1, 1)], [sheet(12, 12)])
    expect(usedIn({ plans, short })).toEqual([1])
    expect(short.map((one) => one.piece)).toEqual(['wide'])
  })

  test('nothing wanted is nothing planned', async () => {
    expect(await plan([], [sheet(5, 5)])).toEqual({ plans: [], short: [] })
    expect(await plan([piece('card', 1, 1, 0)], [])).toEqual({ plans: [], short: [] })
  })
})

describe('so that a stack can be cut together', () => {
  test('sheets are alike where they can be', async () => {
    const { plans } = await plan([piece('base', 7, 10, 16), piece('tag', 1, 3.5, 16)], [sheet(12, 12)])
    expect(plans[0]?.layouts.map(({ times, placed }) => [times, placed.length])).toEqual([[16, 2]])
  })

  test('each size is cut with one setting, and cuts at one setting follow each other', async () => {
    const planned = await plan([piece('card', 5, 7, 12)], [sheet(12, 12)])
    expect(settingsIn(planned).sort()).toEqual(['5', '7'])
    const sizes = [piece('a', 50, 70, 3), piece('b', 30, 70, 3), piece('c', 20, 40, 6)]
    for (const { layouts } of (await plan(sizes, [sheet(200, 200)])).plans)
      for (const { cuts } of layouts) {
        const sets = cuts.map(({ set }) => set.toFraction())
        const changes = sets.filter((set, i) => i > 0 && set !== sets[i - 1]).length
        expect(changes).toBeLessThan(2 * new Set(sets).size)
      }
  })

  test('pieces of one size keep their names and lessons apart', async () => {
    const asked = [
      piece('front', 4, 6, 7, { lesson: 'One' }),
      piece('back', 6, 4, 5, { lesson: 'Two' }),
      piece('front', 4, 6, 5, { lesson: 'Two' }),
    ]
    expect(usedIn(await plan(asked, [sheet(12, 12)]))).toEqual([3])
  })
})

describe('the way there', () => {
  const many = piecesOf(
    [
      [50, 70, 40],
      [35, 62, 33],
      [81, 44, 27],
      [23, 97, 51],
      [66, 66, 14],
    ],
    true,
  )
  const on = [sheet(210, 297), sheet(305, 305, { limit: 6 })]

  test('the same input gives the same plan', async () => {
    expect(sheetsJson(await plan(many, on), 'mm')).toEqual(sheetsJson(await plan(many, on), 'mm'))
  })

  test('with little work there is a plan too, and what it says of itself is true', async () => {
    const quick = await plan(many, on, { effort: 0.001 })
    const whole = await plan(many, on)
    const total = (planned: CuttingPlan) => usedIn(planned).reduce((sum, used) => sum + used, 0)
    expect(total(quick)).toBeGreaterThanOrEqual(total(whole))
    expect(quick.plans.some(({ proven }) => proven)).toBe(false)
    expect(whole.plans.every(({ proven }) => proven)).toBe(true)
  })

  test('progress is told and waited for, and a signal ends the search with the best plan so far', async () => {
    const told: Progress[] = []
    const stop = new AbortController()
    const planned = await plan(many, on, {
      signal: stop.signal,
      progress: async (progress) => {
        told.push(progress)
        await Promise.resolve()
        stop.abort()
      },
    })
    expect(told).toHaveLength(1)
    expect(told[0]).toMatchObject({ stock: 'card' })
    expect(planned.plans.length).toBeGreaterThan(0)
    expect(planned.short).toEqual([])
  })

  test('sizes in inches and millimetres together are exact', async () => {
    const half = { width: inches(17, 4), height: inches(11, 2) }
    const letter = { width: inches(17, 2), height: inches(11) }
    expect(
      usedIn(await plan([piece('card', 1, 1, 8, { size: half })], [sheet(1, 1, { size: letter })])),
    ).toEqual([2])
    // A hair too long for three beside each other.
    const third = { width: mm(new Fraction(210, 3).add(new Fraction(1, 1000))), height: mm(90) }
    expect(
      usedIn(await plan([piece('card', 1, 1, 9, { size: third, turns: false })], [sheet(210, 297)])),
    ).toEqual([2])
    expect(usedIn(await plan([piece('card', 70, 90, 9, { turns: false })], [sheet(210, 297)]))).toEqual([1])
    // Pieces in inches with a gap in millimetres have no coarse common measure.
    const inInches = [
      piece('base', 1, 1, 12, { size: size(8.5, 5, 'in') }),
      piece('beam', 1, 1, 30, { size: size(1.5, 2.5, 'in') }),
      piece('tag', 1, 1, 40, { size: size(0.75, 1.625, 'in') }),
    ]
    const { plans } = await plan(inInches, [sheet(1, 1, { size: size(12, 12, 'in') })], { gap: mm(1) })
    expect(plans[0]).toMatchObject({ proven: true })
  })
})
