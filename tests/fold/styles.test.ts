import { describe, expect, test } from 'vitest'
import { foldStyles } from '../../src/card/fold-styles.ts'
import type { Structure } from '../../src/card/structure.ts'
import { foldCard } from '../../src/fold/prove.ts'
import { same, toMm } from '../../src/length/length.ts'
import { cardOf } from '../card/block.ts'
import { isRefused } from '../card/sizes.ts'
import { troublesIn } from './checker.ts'
import { layerTroublesIn } from './layer-checker.ts'

const sizes = [undefined, 'A6', 'A7 landscape', '5 x 5 in', '120 x 170 mm']

/** A box is not laid flat, so its plates do not lie in layers. */
const isBox = ({ shut = [] }: Structure): boolean =>
  shut.some(({ degrees }) => degrees !== 0 && degrees !== 180)

describe.each([...foldStyles.values()])('$name', (style) => {
  const { starter } = style
  test.each(sizes.filter((closed) => !closed || !isRefused(style, closed)))(
    'at %s shuts, stands, and is whole all the way',
    (closed) => {
      for (const unit of ['in', 'mm'] as const) {
        const card = cardOf(starter, closed ? { unit, closed } : { unit })
        const { structure } = card
        const proof = foldCard(structure)
        expect(proof.findings).toEqual([])
        expect(proof.closed && same(proof.closed.size.width, card.closed.width)).toBe(true)
        expect(proof.closed && same(proof.closed.size.height, card.closed.height)).toBe(true)
        // Sheets lie on each other by their thickness; creases and panels are off by no more than that.
        const thickness = toMm(proof.closed?.thickness ?? structure.pieces[0]?.stock.caliper ?? ({} as never))
        const tolerance = { gap: 1e-5, thickness }
        if (!isBox(structure)) expect(proof.closed && layerTroublesIn(structure, proof.closed)).toEqual([])
        for (const pose of [
          proof.closed?.pose,
          proof.between(0.01),
          proof.between(0.5),
          proof.standing?.pose,
        ])
          expect(pose && troublesIn(structure, pose, tolerance)).toEqual([])
      }
    },
  )
})
