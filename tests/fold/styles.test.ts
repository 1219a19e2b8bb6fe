import { describe, expect, test } from 'vitest'
import { foldStyles } from '../../src/card/fold-styles.ts'
import { foldCard } from '../../src/fold/prove.ts'
import { same, toMm } from '../../src/length/length.ts'
import { cardOf } from '../card/block.ts'
import { troublesIn } from './checker.ts'
import { layerTroublesIn } from './layer-checker.ts'

const sizes = [undefined, 'A6', 'A7 landscape', '5 x 5 in', '120 x 170 mm']

describe.each([...foldStyles.values()])('$name', ({ starter }) => {
  test.each(sizes)('at %s shuts, stands, and is whole all the way', (closed) => {
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
      expect(proof.closed && layerTroublesIn(structure, proof.closed)).toEqual([])
      for (const pose of [proof.closed?.pose, proof.between(0.01), proof.between(0.5), proof.standing?.pose])
        expect(pose && troublesIn(structure, pose, tolerance)).toEqual([])
    }
  })
})
