import { expect, test } from 'vitest'
import { foldStyles } from '../../src/card/fold-styles.ts'
import type { Proof } from '../../src/fold/pose.ts'
import type { Finding } from '../../src/length/finding.ts'
import { wordingOf } from '../../src/wording/wording.ts'
import { movementWords } from '../../src/workshop/movement.ts'
import { cardOf } from '../draw/cards.ts'

const english = wordingOf('en-GB', 'in')
const wordsOf = (block: string): string => {
  const { card, proof } = cardOf(block)
  return movementWords(card.structure, proof, english)
}
const starter = (name: string): string => wordsOf(foldStyles.get(name)?.starter ?? '')

test('a card without rings bends at each of its creases', () => {
  expect(starter('side')).toBe('bends at one crease')
  expect(starter('letter')).toBe('freely: each of its 2 creases bends on its own')
})

// Common practice, no source: a bridge opens with one pull, an easel stands firm on its stop.
test('a ring moves as one, and a stop holds it', () => {
  expect(starter('bridge')).toBe('moves as one: one crease leads the others')
  expect(starter('easel')).toBe('rigid: no crease bends once it stands')
})

test('what moves in more ways than one says in how many', () => {
  const { card, proof } = cardOf(foldStyles.get('bridge')?.starter ?? '')
  const said = (more: Partial<Proof>): string => movementWords(card.structure, { ...proof, ...more }, english)
  expect(said({ freedom: 2 })).toBe('freely: 2 of its 4 creases bend each on their own, and lead the others')
  const floppy: Finding = { rule: 'floppy', severity: 'warning', message: 'floppy' }
  expect(said({ freedom: 2, findings: [floppy] })).toBe('floppy: it moves in 2 ways at once')
})

// The flap is folded over and glued down, so its crease bends no more; the other one does.
test('creases between parts that are stuck together do not bend', () => {
  expect(
    wordsOf(`fold: free
closed: 4 x 6 in
panels: {front: 4 in, back: 4 in, flap: 2 in}
creases: [valley, valley]
bonds: [{panel: flap, onto: back, over: yes, right: 0 in, bottom: 0 in}]`),
  ).toBe('bends at one crease')
})
