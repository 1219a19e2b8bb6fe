import type { Card } from '../card/card.ts'
import type { Piece, Structure } from '../card/structure.ts'
import { flatParts } from '../draw/flat/parts.ts'
import { listOf } from '../length/finding.ts'

/** What a piece is cut with besides the paper trimmer. */
export type Tool = 'knife' | 'scissors'

/** A knife for slits and windows, scissors for what is no rectangle. */
export function toolsFor(card: Card, piece: Piece): Tool[] {
  const { slits, holes, trimmed } = flatParts(card, piece)
  return [
    ...(trimmed ? (['scissors'] as const) : []),
    ...(slits.length > 0 || holes.length > 0 ? (['knife'] as const) : []),
  ]
}

/** How the rest of a piece is cut, once it is a rectangle: sentences, each with a space before it. */
export function furtherCuts(card: Card, piece: Piece): string {
  const { slits, holes, trimmed } = flatParts(card, piece)
  const opened = [
    ...(slits.length > 0 ? [slits.length > 1 ? 'the slits' : 'the slit'] : []),
    ...(holes.length > 0 ? [holes.length > 1 ? 'the windows' : 'the window'] : []),
  ]
  return [
    ...(trimmed ? [' Cut away what lies outside the solid outline, with scissors.'] : []),
    ...(opened.length > 0
      ? [` Cut ${listOf(opened)}${piece.count > 1 ? ' of each' : ''} with a craft knife.`]
      : []),
  ].join('')
}

/** Whether a piece is stuck on with foam. */
export function isFoamed({ plates, bonds }: Structure, { name }: Piece): boolean {
  const own = new Set(plates.filter(({ piece }) => piece === name).map((plate) => plate.name))
  return bonds.some(({ plate, height }) => own.has(plate) && height.gt(0))
}
