import { describe, expect, test } from 'vitest'
import { foldStyles } from '../../src/card/fold-styles.ts'
import { scoresOfPiece } from '../../src/card/scores.ts'
import type { FoldStyle } from '../../src/card/style.ts'
import { foldCard } from '../../src/fold/prove.ts'
import { formatSize } from '../../src/length/format.ts'
import { cardOf, check, measure } from './block.ts'
import { units } from './sizes.ts'

const turning = [...foldStyles.values()].filter(({ choices }) => choices && 'spine' in choices)

/** The starter of a fold for another size and spine; its panels by the names that turn with the card. */
const blockOf = ({ starter }: FoldStyle, spine: string): string =>
  `${starter
    .replace(/^spine:.*\n/m, '')
    .replaceAll(/\b(left|upper) door\b/g, 'first door')
    .replaceAll(/\b(right|lower) door\b/g, 'second door')}\nspine: ${spine}`

/** What is stuck on may stand clear of something at the left or at the top, and does not turn. */
const withoutLayers = (block: string): string => block.replace(/\n(?:layers|spans):\n(?: .*\n?)*/g, '\n')

const ways = [
  ['5 x 7 in', 'long side', 'left'],
  ['7 x 5 in', 'long side', 'top'],
  ['5 x 7 in', 'short side', 'top'],
  ['7 x 5 in', 'short side', 'left'],
  ['6 x 6 in', 'long side', 'left'],
  ['6 x 6 in', 'short side', 'left'],
] as const

test('the folds whose spine can be on another side', () => {
  expect(turning.map(({ name }) => name)).toEqual(expect.arrayContaining(['side', 'gate', 'z', 'letter']))
})

describe.each(turning.map((style) => [style.name, style] as const))('%s', (_, style) => {
  test.each(ways)('%s with its spine on the %s is the card with it on the %s', (closed, by, spine) => {
    for (const unit of units) {
      const [turned, plain] = [by, spine].map((word) => check(blockOf(style, word), { unit, closed }))
      expect(turned?.findings).toEqual(plain?.findings)
      expect(asText(turned?.card?.structure)).toEqual(asText(plain?.card?.structure))
    }
  })

  test('turned, it is the same sheet turned, and shuts to the size turned', () => {
    for (const unit of units) {
      const [upright, lying] = ['5 x 7 in', '7 x 5 in'].map((closed) =>
        cardOf(withoutLayers(blockOf(style, 'long side')), { unit, closed }),
      )
      if (!upright || !lying) throw new Error(style.name)
      const [base, other] = [upright, lying].map(({ structure }) => structure.pieces[0]?.size)
      expect([Number(other?.width), Number(other?.height)]).toEqual([
        Number(base?.height),
        Number(base?.width),
      ])
      // A quarter turn clockwise: what was far from the left edge is near the lower one.
      const [scores, turned] = [upright, lying].map(({ structure }) => scoresOfPiece(structure, 'base'))
      const along = { width: 'height', height: 'width' } as const
      const wanted = (scores ?? []).map(({ at, along: way }) => [
        along[way],
        way === 'width' ? Number(base?.width) - Number(at) : Number(at),
      ])
      const found = (turned ?? []).map(({ at, along: way }) => [way, Number(at)])
      expect(sorted(found)).toEqual(sorted(wanted))
      const closed = foldCard(lying.structure).closed
      expect(closed && formatSize(closed.size, unit)).toBe(formatSize(lying.closed, unit))
    }
  })
})

const sorted = (marks: readonly (readonly (string | number)[])[]) =>
  marks.map(([way, at]) => `${way} ${Number(at).toFixed(6)}`).toSorted()

const asText = (x: unknown): string => JSON.stringify(x, (_, v) => (typeof v === 'bigint' ? String(v) : v))

test('the edge that scores are measured from turns too', () => {
  const block = 'fold: z\nclosed: 5 x 7 in\nspine: long side'
  const [upright, lying] = [cardOf(block), cardOf(block, { closed: '7 x 5 in' })]
  expect([upright, lying].map((card) => measure(card, 'base.edge'))).toEqual(['left edge', 'lower edge'])
  expect(scoresOfPiece(lying.structure, 'base').map(({ along }) => along)).toEqual(['height', 'height'])
  const both = cardOf('fold: twist easel\nclosed: 6 x 6 in')
  expect(measure(both, 'base.edge')).toMatch(/edge/)
})

test('doors have names that hold both ways, and the word to print for them', () => {
  const block =
    'fold: gate\nclosed: 5 x 7 in\nspine: long side\nlayers:\n  mat: {on: second door, border: 1/8 in}'
  const [upright, lying] = [cardOf(block), cardOf(block, { closed: '7 x 5 in' })]
  expect([upright, lying].map((card) => measure(card, 'first door.name'))).toEqual([
    'left door',
    'upper door',
  ])
  expect([upright, lying].map(({ layers }) => layers[0]?.on)).toEqual([['right door'], ['lower door']])
  expect([upright, lying].map((card) => measure(card, 'first door.size'))).toEqual([
    '2 1/2 × 7 in',
    '7 × 2 1/2 in',
  ])
})

test('a border at the spine goes where the spine goes', () => {
  const block = `fold: side
closed: 5 x 7 in
spine: long side
layers:
  mat: {on: front, border: {spine: 1/2 in, opening: 1/4 in, sides: 1/8 in, ends: 1/16 in}}`
  const borders = (closed: string) => {
    const card = cardOf(block, { closed })
    return ['left', 'right', 'top', 'bottom'].map((edge) => measure(card, `mat.border.${edge}`))
  }
  expect(borders('5 x 7 in')).toEqual(['1/2 in', '1/4 in', '1/16 in', '1/16 in'])
  expect(borders('7 x 5 in')).toEqual(['1/8 in', '1/8 in', '1/2 in', '1/4 in'])
})

test('an edge by its own name comes before the spine', () => {
  const card = cardOf(
    'fold: side\nclosed: 5 x 7 in\nlayers:\n  mat: {on: front, border: {spine: 1/2 in, left: 1/8 in}}',
  )
  expect(measure(card, 'mat.border.left')).toBe('1/8 in')
})

test('a fold without such a spine has no border there', () => {
  const { findings } = check(
    'fold: bridge\nclosed: 7 x 5 in\nlayers:\n  mat: {on: floor, border: {spine: 1/8 in}}',
  )
  expect(findings.filter(({ severity }) => severity === 'error').map(({ rule }) => rule)).toEqual([
    'unknown-key',
  ])
})

test('a spine that goes by a size that is worked out is told, with a cure', () => {
  const { findings } = check('fold: side\nclosed: 2 * 3 in x gap\nspine: long side')
  expect(findings.map(({ rule }) => rule)).toContain('value')
  expect(findings.find(({ rule }) => rule === 'value')?.suggestion).toBe(
    'Write width and height, such as `closed: 5 x 7 in`, or choose left or top',
  )
})
