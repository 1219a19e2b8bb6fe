import { expect, test } from 'vitest'
import { mm } from '../../../src/length/length.ts'
import type { CuttingPlan, Layout } from '../../../src/workshop/cutting/cutting.ts'
import { planCutting } from '../../../src/workshop/cutting/plan-cutting.ts'
import { piece, sheet } from './asked.ts'
import { mistakesIn } from './checker.ts'

const pieces = [piece('base', 8, 5, 2), piece('tag', 3, 2, 4, { turns: false })]
const sheets = [sheet(12, 12)]

/** A right plan with its first layout spoilt. */
async function spoilt(spoil: (layout: Layout) => Partial<Layout>): Promise<string[]> {
  const plan = await planCutting(pieces, sheets)
  const change = ({ layouts, ...rest }: CuttingPlan['plans'][number]) => ({
    ...rest,
    layouts: layouts.map((layout, i) => (i === 0 ? { ...layout, ...spoil(layout) } : layout)),
  })
  return mistakesIn({ ...plan, plans: plan.plans.map(change) }, pieces, sheets)
}

test.each<[string, RegExp, (layout: Layout) => Partial<Layout>]>([
  ['a cut is missing', /edge to edge|not cut out/, ({ cuts }) => ({ cuts: cuts.slice(1) })],
  ['the last cut is missing', /not cut out/, ({ cuts }) => ({ cuts: cuts.slice(0, -1) })],
  ['the cuts are in another order', /edge to edge/, ({ cuts }) => ({ cuts: cuts.toReversed() })],
  ['a piece is missing', /1 of .* left/, ({ placed }) => ({ placed: placed.slice(1) })],
  [
    'a piece lies on another',
    /not cut out/,
    ({ placed }) => ({ placed: [...placed, ...placed.slice(0, 1)] }),
  ],
  [
    'a piece lies elsewhere',
    /not cut out/,
    ({ placed }) => ({ placed: placed.map((one, i) => (i === 0 ? { ...one, x: mm(1) } : one)) }),
  ],
  [
    'a piece is turned that must not be',
    /another size|must not be turned/,
    ({ placed }) => ({ placed: placed.map((one) => (one.piece === 'tag' ? { ...one, turned: true } : one)) }),
  ],
  [
    'the stop is set wrongly',
    /set to/,
    ({ cuts }) => ({ cuts: cuts.map((cut, i) => (i === 0 ? { ...cut, set: mm(1) } : cut)) }),
  ],
  ['it is cut more often', /sheets are told|left/, ({ times }) => ({ times: times + 1 })],
])('the checker sees it when %s', async (_, mistake, spoil) => {
  expect(await spoilt(() => ({}))).toEqual([])
  expect((await spoilt(spoil)).join('; ')).toMatch(mistake)
})

test('the checker sees the gap of the knife', async () => {
  const plan = await planCutting(pieces, sheets, { gap: mm(1) })
  expect(mistakesIn(plan, pieces, sheets, mm(1))).toEqual([])
  expect(mistakesIn(plan, pieces, sheets)).not.toEqual([])
})
