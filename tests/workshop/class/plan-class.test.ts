import { describe, expect, test } from 'vitest'
import { classKit } from '../../../src/workshop/class/class-kit.ts'
import { planClass } from '../../../src/workshop/class/plan-class.ts'
import { readClass } from '../../../src/workshop/class/read-class.ts'
import { shortFindings } from '../../../src/workshop/class/short-findings.ts'
import { taughtLesson } from '../../../src/workshop/class/taught.ts'
import { harbour } from '../harbour.ts'

function classOf(text: string) {
  const { file, findings } = readClass(text)
  expect(findings).toEqual([])
  const lessons = file.lessons.map((one) => taughtLesson(one, harbour(), file).taught)
  return { file, lessons }
}

const sheets = `currency: £
sheets:
  dark blue card: {size: 12 x 12 in, price: 0.60, have: 4}
  patterned paper: {size: 12 x 12 in, price: 0.45}
  grey card: {size: 12 x 12 in, price: 0.50}
  envelope paper: {size: 12 x 12 in, price: 0.30}
supplies:
  pearl dots: {pack: 100, price: 1.80}
`

// The bridge card of 7 × 5 in; two bases of 8 1/2 × 5 in come out of a sheet of 12 × 12 in, and one envelope of
// 9 3/4 × 9 3/4 in. Nine sea walls of 7 × 1 1/4 in lie on one another. Worked by hand.
describe('a class of 14 with 2 spare kits', () => {
  const { file, lessons } = classOf(`people: 14\nspare: 2\nlesson: a.md\n${sheets}`)

  test('the sheets that can be counted by hand', async () => {
    const { plans, short } = await planClass(file, lessons)
    expect(short).toEqual([])
    const used = new Map(plans.map((plan) => [plan.stock, plan.used]))
    expect(used.get('dark blue card')).toBe(8)
    expect(used.get('envelope paper')).toBe(16)
    expect(used.get('grey card')).toBe(2)
  })

  test('every kit gets every piece, whatever the layouts', async () => {
    const { plans } = await planClass(file, lessons)
    const counts = new Map<string, number>()
    for (const { layouts } of plans)
      for (const { times, placed } of layouts)
        for (const { piece } of placed) counts.set(piece, (counts.get(piece) ?? 0) + times)
    expect(Object.fromEntries(counts)).toEqual({
      base: 16,
      'side strip': 32,
      backdrop: 16,
      'sea wall': 16,
      envelope: 16,
    })
  })

  test('what lies there is taken off, and the cost is that of the rest', async () => {
    const { purchases } = await planClass(file, lessons)
    const kit = classKit(file, lessons, purchases)
    const line = (item: string) => kit.buy.find((one) => one.item === item)
    expect([line('dark blue card')?.count, line('dark blue card')?.cost?.valueOf()]).toEqual([4, 2.4])
    expect([line('envelope paper')?.count, line('envelope paper')?.cost?.valueOf()]).toEqual([16, 4.8])
    const sum = kit.buy.reduce((all, { cost }) => all + (cost?.valueOf() ?? 0), 0)
    expect(kit.total.valueOf()).toBeCloseTo(sum, 9)
    expect(kit.aHead.mul(14).equals(kit.total)).toBe(true)
  })
})

test('a stock without sheets is told, and the rest is planned', async () => {
  const { file, lessons } = classOf('people: 2\nlesson: a.md\nsheets: {grey card: 12 x 12 in}')
  const { plans, short } = await planClass(file, lessons)
  expect(plans.map(({ stock }) => stock)).toEqual(['grey card'])
  expect(short.map(({ piece }) => piece)).toEqual(['base', 'side strip', 'backdrop', 'envelope'])
  for (const finding of shortFindings(short, file))
    expect(finding).toMatchObject({ rule: 'not-cut', severity: 'error' })
})

test('fibres run along the scores: then only one base of 8 1/2 × 5 in comes out of a sheet of 12 × 8 in', async () => {
  const used = async (grain: string) => {
    const { file, lessons } = classOf(
      `people: 4\nlesson: a.md\nsheets: {dark blue card: {size: 12 x 9 in, grain: ${grain}}}`,
    )
    const { plans } = await planClass(file, lessons)
    return plans[0]?.layouts.flatMap(({ placed }) => placed.map(({ turned }) => turned))
  }
  // The base is scored up its height; on a sheet 12 wide and 9 high, long grain runs along the width.
  expect(new Set(await used('long'))).toEqual(new Set([true]))
  expect(new Set(await used('short'))).toEqual(new Set([false]))
})

test('the knife takes its gap: two strips of half a sheet do not come out of it', async () => {
  const sheetsUsed = async (gap: string) => {
    const { file, lessons } = classOf(
      `people: 1\nlesson: a.md\ntrimmer: {gap: ${gap}}\nsheets: {patterned paper: {size: 5 3/8 x 6 1/2 in}}`,
    )
    return (await planClass(file, lessons)).plans.reduce((sum, { used }) => sum + used, 0)
  }
  // Two strips of 3/4 × 5 in, turned, are 1 1/2 in high above a backdrop of 5 3/8 × 5 in.
  expect(await sheetsUsed('0 mm')).toBe(1)
  expect(await sheetsUsed('1 mm')).toBe(2)
})
