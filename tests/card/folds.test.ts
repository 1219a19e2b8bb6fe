import * as fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { foldStyles } from '../../src/card/fold-styles.ts'
import { scoresOf } from '../../src/card/scores.ts'
import type { Segment } from '../../src/card/structure.ts'
import { targetOf } from '../../src/card/targets.ts'
import { isOnGrid } from '../../src/length/grid.ts'
import { plus, same } from '../../src/length/length.ts'
import { cardOf, check } from './block.ts'
import { anyLengthsOf, isOwnWord, otherwise, saidToWork } from './chosen-otherwise.ts'
import { troublesOfSheets } from './sheets.ts'
import { cardsAt, isRefused, sizes, units } from './sizes.ts'

/** What every fold style promises, at any size and in both units. */
describe.each([...foldStyles.values()])('$name', (style) => {
  const made = sizes.filter((closed) => !isRefused(style, closed))

  test('the starter checks without a word', () => {
    for (const unit of units) expect(check(style.starter, { unit }).findings).toEqual([])
  })

  test('the starter has the panels and pieces that the catalogue names', () => {
    const { structure } = cardOf(style.starter)
    for (const panel of Object.keys(style.panels))
      expect(structure.plates.map((p) => p.name)).toContain(panel)
    for (const piece of ['base', ...(style.pieces ?? [])])
      expect(structure.pieces.map((p) => p.name)).toContain(piece)
  })

  test.each(sizes.filter((closed) => isRefused(style, closed)))('%s is refused, with a cure', (closed) => {
    for (const unit of units) {
      const { findings } = check(style.starter, { unit, closed })
      expect(new Set(findings.map(({ rule }) => rule))).toEqual(new Set(['impossible-size']))
      for (const { suggestion } of findings) expect(suggestion).toMatch(/\d/)
    }
  })

  test('some of the sizes are not refused', () => {
    expect(made.length).toBeGreaterThanOrEqual(2)
  })

  test.each(made)('at %s every piece, score and straight cut lies on the ruler', (closed) => {
    for (const { structure, grid } of cardsAt(style, closed)) {
      for (const piece of structure.pieces) {
        expect(
          [piece.size.width, piece.size.height].every((x) => isOnGrid(x, grid) && x.gt(0)),
          piece.name,
        ).toBe(true)
        expect(
          structure.plates.some((p) => p.piece === piece.name) || piece.kind === 'loose',
          piece.name,
        ).toBe(true)
        for (const mark of piece.cuts.flatMap(markOf)) expect(isOnGrid(mark, grid), piece.name).toBe(true)
      }
      for (const score of scoresOf(structure.hinges)) expect(isOnGrid(score.at, grid)).toBe(true)
    }
  })

  test.each(made)('at %s every piece can be cut from a sheet', (closed) => {
    for (const { structure } of cardsAt(style, closed)) expect(troublesOfSheets(structure)).toEqual([])
  })

  test('and at any other size that it can be made in', () => {
    fc.assert(
      fc.property(anySize, fc.constantFrom(...units), (closed, unit) => {
        const { card } = check(style.starter, { unit, closed })
        fc.pre(card !== undefined)
        if (card) expect(troublesOfSheets(card.structure)).toEqual([])
      }),
      { numRuns: 30 },
    )
  })

  test('layers stay inside what they sit on', () => {
    fc.assert(
      fc.property(anySize, fc.constantFrom(...units), (closed, unit) => {
        const { card } = check(style.starter, { unit, closed })
        fc.pre(card !== undefined)
        if (!card) return
        const sizeOf = (name: string) => {
          const plate = card.structure.plates.find((p) => p.name === name)
          if (!plate) throw new Error(name)
          return targetOf(plate, 'face').size
        }
        for (const layer of card.layers)
          for (const [i, plate] of layer.plates.entries()) {
            const [own, panel] = [sizeOf(plate), sizeOf(layer.on[i] ?? '')]
            // Alike layers on panels a ruler mark apart are the smaller size, so the rest only grows.
            expect(plus(own.width, layer.border.left, layer.border.right).lte(panel.width), plate).toBe(true)
            expect(plus(own.height, layer.border.top, layer.border.bottom).lte(panel.height), plate).toBe(
              true,
            )
          }
      }),
      { numRuns: 50 },
    )
  })

  const own = [style.parameters, style.counts ?? {}, style.choices ?? {}].flatMap(Object.keys)
  test.each(own)('`%s` changes the card', (key) => {
    expect(otherwise(style, key)).toBe('changed')
  })

  test.each(Object.keys(style.choices ?? {}))('every word of `%s` makes a card of its own', (key) => {
    for (const word of style.choices?.[key]?.words ?? []) expect(isOwnWord(style, key, word), word).toBe(true)
  })

  test.each(Object.keys(style.parameters))('no length of `%s` makes what cannot be cut', (key) => {
    for (const { length, structure } of anyLengthsOf(style, key))
      expect([length, structure && troublesOfSheets(structure)]).toEqual([length, structure && []])
  })

  test.each(Object.keys(style.parameters))('what a refusal of `%s` says would work does work', (key) => {
    for (const { refused, said, works } of saidToWork(style, key))
      expect(works, `${key}: ${refused} is refused, ${said} is said to work`).toBe(true)
  })
})

const side = fc.integer({ min: 60, max: 400 })
/** Half of them are square, for folds that nothing else can be made as. */
const anySize = fc
  .oneof(
    fc.tuple(side, side),
    side.map((x) => [x, x]),
  )
  .map(([w, h]) => `${w} x ${h} mm`)

/** Where an upright or level cut is; a slanting one is marked at its ends. */
const markOf = ({ from, to }: Segment) => [
  ...(same(from.x, to.x) ? [from.x] : []),
  ...(same(from.y, to.y) ? [from.y] : []),
]

test('the doors of a gate are of one size; what does not halve on the ruler is a gap between them', () => {
  const { structure } = cardOf('fold: gate\nclosed: 127 x 177 mm', { unit: 'mm' })
  const widths = structure.plates.map((plate) => targetOf(plate, 'face').size.width.valueOf())
  expect(widths).toEqual([63, 127, 63])
})
