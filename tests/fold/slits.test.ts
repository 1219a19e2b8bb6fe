import { expect, test } from 'vitest'
import type { Structure } from '../../src/card/structure.ts'
import type { Pose, Vector } from '../../src/fold/pose.ts'
import { foldCard } from '../../src/fold/prove.ts'
import { mm, numberIn, toMm } from '../../src/length/length.ts'
import { cardOf, check } from '../card/block.ts'
import data from '../data/pop-ups.json' with { type: 'json' }
import { inSpace, troublesIn } from './checker.ts'
import { layerTroublesIn } from './layer-checker.ts'

const dot = (a: Vector, b: Vector) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2]

/** Where a plate's point at x is from the spine, seen along it: away from it along the back, and up from the back. */
function fromSpine(pose: Pose | undefined, plate: string, x: number, spine: number): [number, number] {
  const [back, own] = [pose?.get('back'), pose?.get(plate)]
  if (!back || !own) throw new Error('no pose')
  const [from, at] = [inSpace(back, [spine, 0]), inSpace(own, [x, 0])]
  const way: Vector = [at[0] - from[0], at[1] - from[1], at[2] - from[2]]
  return [dot(way, back.right), dot(way, back.normal)]
}

const asBox = ({ page, on_page1, on_page2 }: (typeof data.parallelogram)[number]) =>
  `fold: box step\nclosed: ${page} x 100 mm\nheight: ${on_page2} mm\ndepth: ${on_page1} mm\nwidth: 30 mm`
const options = { unit: 'mm', grid: mm(0.05) } as const

test.each(data.parallelogram)(
  'as a box, $id is refused if it sticks out of the shut card, by as much',
  (figure) => {
    const out = figure.expect_shut_reach - figure.page
    const messages = check(asBox(figure), options).findings.map(({ message }) => message)
    expect(messages).toEqual(out > 0 ? [`\`step\` sticks out of the shut card by ${out} mm`] : [])
    expect(messages.length === 0).toBe(figure.stays_inside_when_shut)
  },
)

// The card is shown open at a right angle, and not any further.
const onTheWay = data.parallelogram.filter(
  ({ stays_inside_when_shut, opening_deg: opening }) =>
    stays_inside_when_shut && opening > 0 && opening <= 90,
)

test.each(onTheWay)('as a box, the edge of $id is where the source has it', (figure) => {
  const { page, on_page1: depth, on_page2: height, opening_deg: opening, tolerance } = figure
  const proof = foldCard(cardOf(asBox(figure), options).structure)
  const edge = fromSpine(proof.between(opening / 90), 'step front', page - height + depth, page)
  for (const [i, x] of figure.expect_edge_xy.entries())
    expect(Math.abs((edge[i] ?? Number.NaN) - x)).toBeLessThan(tolerance)
  expect(proof.freedom).toBe(1)
})

/** Whole all the way from shut to standing; between plates that are many layers apart creases gape by those. */
function expectWhole(structure: Structure): ReturnType<typeof foldCard> {
  const proof = foldCard(structure)
  expect(proof.findings).toEqual([])
  const caliper = toMm(structure.pieces[0]?.stock.caliper ?? mm(0))
  const shut = { gap: 1e-5, thickness: structure.plates.length * caliper }
  expect(proof.closed && troublesIn(structure, proof.closed.pose, shut)).toEqual([])
  expect(proof.closed && layerTroublesIn(structure, proof.closed)).toEqual([])
  for (const share of [0.01, 0.25, 0.5, 0.75, 1]) {
    const pose = proof.between(share)
    expect(pose && troublesIn(structure, pose, { gap: 1e-5, thickness: 0 })).toEqual([])
  }
  return proof
}

const town = (spine: string) => `fold: box step
closed: 7 x 7 in
spine: ${spine}
boxes:
  tower: {height: 2 in, depth: 1 in, width: 1 1/2 in, at: 1 in}
  shop: {height: 1 in, depth: 2 in, width: 2 in, at: 2 1/2 in}
  chimney: {on: tower, height: 1 in, depth: 1/2 in, width: 1/2 in, at: tower.at}
  pot: {on: chimney, height: 1/2 in, depth: 1/4 in, width: 1/4 in}
  sign: {on: shop, height: 3/4 in, depth: 1 1/2 in, width: 1 in}
  crate: {height: 1/2 in, depth: 3 in, width: 1 in, at: 6 in}`

test.each(['left', 'top'])('a town of boxes beside and on one another, spine %s, opens as one', (spine) => {
  const { structure } = cardOf(town(spine))
  const proof = expectWhole(structure)
  expect(proof.freedom).toBe(1)
  if (spine === 'top') return
  const standing = proof.standing?.pose
  // The pot stands on 2 in of tower and 1 in of chimney; the edge of its top is 2 + 1 + 1/2 up and 1/4 forward.
  const inch = 25.4
  const edge = fromSpine(standing, 'pot top', (7 - 3.5 + 0.25) * inch, 7 * inch)
  expect(edge.map((x) => x / inch)).toEqual([expect.closeTo(0.25, 6), expect.closeTo(3.5, 6)])
})

test.each([1, 2, 3, 6])(
  'stairs of %i steps: treads stay parallel to the back, risers to the front',
  (steps) => {
    for (const fold of ['side step', 'centre step'])
      for (const spine of ['left', 'top']) {
        const { structure } = cardOf(`fold: ${fold}\nclosed: 5 x 5 in\nspine: ${spine}\nsteps: ${steps}`)
        const proof = expectWhole(structure)
        // A ring of 2n + 2 creases in a plane leaves 2n - 1 of them free.
        expect(proof.freedom).toBe(2 * steps - 1)
        const pose = proof.between(0.4)
        const turned = (plate: string, by: string) =>
          dot(pose?.get(plate)?.normal ?? [0, 0, 0], pose?.get(by)?.normal ?? [0, 0, 0])
        for (let i = 1; i <= steps; i++)
          expect([turned(`tread ${i}`, 'back'), turned(`riser ${i}`, 'front')]).toEqual([
            expect.closeTo(1, 6),
            expect.closeTo(1, 6),
          ])
      }
  },
)

test('a shutter comes forward by as much as its doors go back', () => {
  const { structure } = cardOf('fold: shutter\nclosed: 4 x 6 in\nend: 1 1/2 in')
  const proof = expectWhole(structure)
  const pose = proof.standing?.pose
  const [end, middle, upper, lower] = ['left end', 'middle', 'upper', 'lower'].map((name) => pose?.get(name))
  if (!end || !middle || !upper || !lower) throw new Error('no pose')
  const before = (at: typeof end, x: number) => {
    const [from, to] = [inSpace(end, [0, 0]), inSpace(at, [x, 0])]
    return dot([to[0] - from[0], to[1] - from[1], to[2] - from[2]], end.normal) / 25.4
  }
  // Each side panel is 1 1/2 in wide and bent by 75°.
  const out = 1.5 * Math.sin((75 * Math.PI) / 180)
  expect(before(middle, 3 * 25.4)).toBeCloseTo(out, 6)
  expect(before(upper, 3 * 25.4)).toBeCloseTo(-out, 6)
  expect(before(lower, 3 * 25.4)).toBeCloseTo(-out, 6)
  expect(dot(middle.normal, end.normal)).toBeCloseTo(1, 6)
  expect(proof.freedom).toBe(6)
})

test.each([
  ['wider than its strip', 'reach: 2 in\nstrip: 1 1/2 in'],
  ['just as wide', 'reach: 1 1/2 in\nstrip: 1 1/2 in'],
])('a swing %s fills its own window when it is shut, turned over', (_, lengths) => {
  const { structure } = cardOf(`fold: swing\nclosed: 6 x 6 in\n${lengths}`)
  const { closed, freedom } = expectWhole(structure)
  const laid = closed?.plates.find(({ plate }) => plate === 'swing')
  const reach = lengths.startsWith('reach: 2') ? 2 : 1.5
  // The axis is at 3 in.
  expect(laid && numberIn(laid.left, 'in')).toBe(3 - reach)
  expect(laid && numberIn(laid.size.width, 'in')).toBe(2 * reach)
  expect([laid?.faceUp, freedom]).toEqual([false, 2])
  expect(closed?.order).toEqual(['front', 'swing', 'back'])
})
