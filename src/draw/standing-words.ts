import Fraction from 'fraction.js'
import type { Card } from '../card/card.ts'
import type { Standing } from '../fold/pose.ts'
import { listOf } from '../length/finding.ts'
import { formatLength } from '../length/format.ts'
import { nearest } from '../length/grid.ts'
import { mm, type Unit } from '../length/length.ts'
import { toMm } from './plane.ts'

/** `stands 8 in wide, 6 in high, 1 in deep`; what falls between two marks of the ruler is said to be about one. */
export function sizeWords({ width, height, depth }: Standing, card: Card, unit: Unit): string {
  const say = (x: number) => {
    const mark = nearest(mm(new Fraction(Math.round(x * 1000), 1000)), card.grid)
    return `${Math.abs(toMm(mark) - x) > 0.05 ? 'about ' : ''}${formatLength(mark, unit)}`
  }
  return `stands ${say(width)} wide, ${say(height)} high, ${say(depth)} deep`
}

/** What a sighted reader takes from the view of the standing card. */
export function standingWords(card: Card, standing: Standing, of: string | undefined, unit: Unit): string {
  const shown = card.structure.pieces.filter((piece) =>
    card.structure.plates.some((plate) => plate.piece === piece.name && standing.pose.has(plate.name)),
  )
  const pieces = shown.map((piece) => {
    const onto = card.structure.bonds
      .filter((b) => card.structure.plates.find((p) => p.name === b.plate)?.piece === piece.name)
      .map((b) => b.onto)
    return `${piece.name} of ${piece.stock.name}${onto.length > 0 ? ` on ${listOf(onto)}` : ''}`
  })
  const letters = card.lettering.map((l) => `The letters ${l.letters.join('')} are on ${l.on}.`)
  return [
    `The ${card.fold} card standing, seen from the front left and slightly above; it ${sizeWords(standing, card, unit)}.`,
    `Pieces: ${listOf(pieces)}.`,
    ...letters,
    ...(of ? [`Drawn in the accent colour and with a heavier line: ${of}.`] : []),
  ].join(' ')
}
