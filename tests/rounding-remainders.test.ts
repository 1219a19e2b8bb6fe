import { describe, expect, test } from 'vitest'
import { foldStyles } from '../src/card/fold-styles.ts'
import { inches, type Length, mm, numberIn } from '../src/length/length.ts'
import { amountIn } from '../src/lesson/amount.ts'
import { fillLesson } from '../src/lesson/fill.ts'
import { readLesson } from '../src/lesson/read.ts'
import { wordingOf } from '../src/wording/wording.ts'
import { cardOf, check } from './card/block.ts'

const odd = { unit: 'mm', grid: mm(1) } as const

/** Left edge, right edge, lower edge and upper edge of a plate of a card, in mm. */
function spread(block: string, plate: string) {
  const outline = cardOf(block, odd).structure.plates.find(({ name }) => name === plate)?.outline ?? []
  const [xs, ys] = [outline.map(({ x }) => numberIn(x, 'mm')), outline.map(({ y }) => numberIn(y, 'mm'))]
  return {
    width: Math.max(...xs) - Math.min(...xs),
    height: Math.max(...ys) - Math.min(...ys),
    bottom: Math.min(...ys),
  }
}

/** By hand: what one part takes of a length that does not divide on a ruler of 1 mm. */
describe('what does not divide goes to the part that the catalogue names', () => {
  test('gate: 101 mm are two doors of 50 mm and a gap', () => {
    const block = 'fold: gate\nclosed: 101 x 150 mm'
    expect([spread(block, 'left door').width, spread(block, 'right door').width]).toEqual([50, 50])
    expect(spread(block, 'back').width).toBe(101)
  })

  test('easel: 101 mm are a prop of 51 mm and a foot of 50 mm', () => {
    const block = 'fold: easel\nclosed: 101 x 101 mm'
    expect([spread(block, 'prop').height, spread(block, 'foot').height]).toEqual([51, 50])
  })

  test('endless: of 103 mm the ends are 25 mm, and the pieces leave a gap of 3 mm', () => {
    const block = 'fold: endless\nclosed: 103 x 103 mm'
    expect([spread(block, 'upper left').width, spread(block, 'upper middle').width]).toEqual([25, 53])
    expect(103 - 2 * spread(block, 'upper left').height).toBe(3)
  })

  test('centre step: of 51 mm beside the band 25 mm are below it and 26 mm above', () => {
    const block = 'fold: centre step\nclosed: 120 x 101 mm\nband: 50 mm'
    expect(spread(block, 'riser 1')).toMatchObject({ height: 50, bottom: 25 })
  })

  test('floating layer: of a panel 100 mm high the link is 34 mm', () => {
    const block = 'fold: floating layer\nclosed: 150 x 112 mm\nborder: 6 mm'
    expect([spread(block, 'raised panel').height, spread(block, 'link').height]).toEqual([100, 34])
  })

  test('exploding box: a nest 7 mm smaller stands 3 mm inside the left and the lower edge, 4 mm inside the others', () => {
    const card = cardOf('fold: exploding box\nclosed: 100 x 100 mm\nstep: 7 mm', odd)
    const bond = card.structure.bonds.find(({ plate }) => plate === 'nest 1 floor')
    // The floor of the box begins at 100 mm in its sheet, that of the nest at 93 mm in its own.
    const inside = (at: Length | undefined) => (at ? numberIn(at, 'mm') + 93 - 100 : Number.NaN)
    expect([inside(bond?.at.x), inside(bond?.at.y)]).toEqual([3, 3])
  })

  test('each of these folds says so', () => {
    const told = ['gate', 'easel', 'endless', 'centre step', 'floating layer', 'exploding box']
    for (const name of told) expect(foldStyles.get(name)?.remainder, name).toMatch(/\w/)
    expect(foldStyles.get('side')?.remainder).toBeUndefined()
  })
})

describe('what is nothing on the ruler', () => {
  const eighths = { unit: 'in', grid: inches(1, 8) } as const
  test.each([
    ['a piece', 'pieces: {dot: {size: 1/32 in x 1 in}}', '`dot`: on a ruler of 1/8 in it is 0 × 1 in'],
    ['a piece of a card that is too small', 'pieces: {tag: {size: closed.width - 6 in x 1 in}}', '-1 × 1 in'],
    [
      'a window',
      'layers: {mat: {on: front, border: 1/8 in}}\napertures: {gap: {on: mat, size: 1/9 x 1 in}}',
      '0 × 1 in',
    ],
    ['a span', 'spans: {bar: {from: front, to: front, height: 1/9 in, width: 1 in}}', '1 × 0 in'],
    [
      'letters',
      'pieces: {bar: {size: 5 x 1 in}}\nlettering: {name: {on: bar, letters: AB, widths: 0 in}}',
      'Letter 1 of `name` is 0 in wide',
    ],
  ])('%s is refused', (_, block, told) => {
    const { card, findings } = check(`fold: side\nclosed: 5 x 7 in\n${block}`, eighths)
    expect(card).toBeUndefined()
    expect(findings.map(({ rule, severity }) => [rule, severity])).toEqual([['impossible-size', 'error']])
    expect(findings[0]?.message).toContain(told)
    expect(findings[0]?.suggestion).toMatch(/1\/8 in both ways|above zero/)
  })
})

test.each([
  ['500 mm', 'in', inches(1, 16), inches(315, 16)],
  ['base.width / 7', 'in', inches(1, 16), inches(23, 16)],
  ['12 in', 'mm', mm(1), mm(305)],
  ['12 in', 'in', inches(1, 16), inches(12)],
] as const)('%s of tape in %s goes up to the ruler', (text, unit, grid, expected) => {
  const lookup = () => ({ kind: 'length', value: inches(10) }) as const
  const amount = amountIn(text, { wording: wordingOf('en', unit), grid, lookup })
  expect(amount.kind === 'length' && amount.length.equals(expected)).toBe(true)
})

test.each([
  ['letter', 'creep: 200 mm', '2 mm is usual'],
  ['double gate', 'creep: 200 mm', '2 mm is usual'],
  ['belly band', 'overlap: 0 mm', '26 mm is usual'],
])('what is usual of a %s is said in the unit of the print', (fold, block, told) => {
  const { findings } = check(`fold: ${fold}\nclosed: 100 x 150 mm\n${block}`, odd)
  expect(findings[0]?.suggestion).toContain(told)
})

test('a length in the steps that the ruler does not have is told', () => {
  const lesson = readLesson(
    '---\ntitle: A card\n---\n\n```card\nfold: side\nclosed: 101 x 150 mm\n```\n\n1. Mark {closed.width / 2}.\n',
  )
  const rules = fillLesson(lesson, { units: 'mm' }).findings.map(({ rule }) => rule)
  expect(rules).toContain('off-grid')
})
