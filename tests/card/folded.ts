import { expect } from 'vitest'
import type { Structure } from '../../src/card/structure.ts'
import { foldCard } from '../../src/fold/prove.ts'
import { formatSize } from '../../src/length/format.ts'
import { numberIn } from '../../src/length/length.ts'
import { troublesIn } from '../fold/checker.ts'
import { cardOf } from './block.ts'
import { troublesOfSheets } from './sheets.ts'

/** Folds a card, and looks whether it is whole all the way. */
export function folded(block: string, options: Parameters<typeof cardOf>[1] = {}) {
  const card = cardOf(block, options)
  const proof = foldCard(card.structure)
  expect(proof.findings).toEqual([])
  expect(troublesOfSheets(card.structure)).toEqual([])
  const thickness = proof.closed ? numberIn(proof.closed.thickness, 'mm') : 0
  for (const pose of [proof.closed?.pose, proof.between(0.01), proof.between(0.5), proof.standing?.pose])
    expect(pose && troublesIn(card.structure, pose, { gap: 1e-5, thickness })).toEqual([])
  return { card, proof, closed: proof.closed && formatSize(proof.closed.size, card.unit) }
}

/** The cuts of a piece as [x1, y1, x2, y2], in inches. */
export const cutsOf = ({ pieces }: Structure, piece = 'base') =>
  pieces
    .find(({ name }) => name === piece)
    ?.cuts.map(({ from, to }) => [from.x, from.y, to.x, to.y].map((x) => numberIn(x, 'in')))

/** Two strips with a wall each, one further to the right than the other. */
export const stagger = `fold: free
closed: 7 x 5 in
strips:
  upper:
    panels: {front: 2 1/2 in, upper wall: 1 in, back: closed.width + upper wall.width - upper.front}
    creases: [mountain, valley]
  lower:
    height: 2 in
    panels: {front: 5 in, lower wall: upper wall.width, back}
    creases: [mountain, valley]
`
