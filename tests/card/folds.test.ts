import * as fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { foldStyles } from '../../src/card/fold-styles.ts'
import { scoresOf } from '../../src/card/scores.ts'
import { targetOf } from '../../src/card/targets.ts'
import { isOnGrid } from '../../src/length/grid.ts'
import { plus, zero } from '../../src/length/length.ts'
import { cardOf, check } from './block.ts'

const sizes = ['A6', 'A7 landscape', '7 x 5 in', '5 x 5 in', '4 1/4 x 5 1/2 in', '120 x 170 mm']
const units = ['in', 'mm'] as const

/** What every fold style promises, at any size and in both units. */
describe.each([...foldStyles.values()])('$name', (style) => {
  test('the starter checks without a word', () => {
    for (const unit of units) expect(check(style.starter, { unit }).findings).toEqual([])
  })

  test('the starter has the panels that the catalogue names', () => {
    const { structure } = cardOf(style.starter)
    for (const panel of Object.keys(style.panels))
      expect(structure.plates.map((p) => p.name)).toContain(panel)
  })

  test.each(sizes)('at %s every piece, panel and score lies on the ruler', (closed) => {
    for (const unit of units) {
      const { structure, grid } = cardOf(style.starter, { unit, closed })
      for (const piece of structure.pieces) {
        expect(
          [piece.size.width, piece.size.height].every((x) => isOnGrid(x, grid) && x.gt(0)),
          piece.name,
        ).toBe(true)
        expect(
          structure.plates.some((p) => p.piece === piece.name) || piece.kind === 'loose',
          piece.name,
        ).toBe(true)
      }
      for (const score of scoresOf(structure.hinges)) expect(isOnGrid(score.at, grid)).toBe(true)
    }
  })

  test('the panels of the base add up to the sheet', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 60, max: 400 }),
        fc.integer({ min: 60, max: 400 }),
        fc.constantFrom(...units),
        (w, h, unit) => {
          const { card } = check(style.starter, { unit, closed: `${w} x ${h} mm` })
          fc.pre(card !== undefined)
          if (!card) return
          const base = card.structure.pieces.find((p) => p.name === 'base')
          const panels = card.structure.plates
            .filter((p) => p.piece === 'base')
            .map((p) => targetOf(p, 'face').size)
          const along = scoresOf(card.structure.hinges)[0]?.along ?? 'width'
          expect(base && plus(zero, ...panels.map((s) => s[along])).equals(base.size[along])).toBe(true)
        },
      ),
    )
  })

  test('layers stay inside what they sit on', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 60, max: 400 }),
        fc.integer({ min: 60, max: 400 }),
        fc.constantFrom(...units),
        (w, h, unit) => {
          const { card } = check(style.starter, { unit, closed: `${w} x ${h} mm` })
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
              expect(plus(own.width, layer.border.left, layer.border.right).lte(panel.width), plate).toBe(
                true,
              )
              expect(plus(own.height, layer.border.top, layer.border.bottom).lte(panel.height), plate).toBe(
                true,
              )
            }
        },
      ),
    )
  })
})

test('the doors of a gate are of one size; what does not halve on the ruler is a gap between them', () => {
  const { structure } = cardOf('fold: gate\nclosed: 127 x 177 mm', { unit: 'mm' })
  const widths = structure.plates.map((plate) => targetOf(plate, 'face').size.width.valueOf())
  expect(widths).toEqual([63, 127, 63])
})
