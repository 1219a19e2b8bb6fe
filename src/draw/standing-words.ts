import Fraction from 'fraction.js'
import type { Card } from '../card/card.ts'
import type { Standing } from '../fold/pose.ts'
import { nearest } from '../length/grid.ts'
import { mm } from '../length/length.ts'
import type { Wording } from '../wording/wording.ts'
import { about, cardName, namesOf } from './phrases.ts'
import { toMm } from './plane.ts'

/** What falls between two marks of the ruler is said to be about one. */
function sizesOf({ width, height, depth }: Standing, { grid }: Card, wording: Wording) {
  const said = (x: number): string => {
    const mark = nearest(mm(new Fraction(Math.round(x * 1000), 1000)), grid)
    return Math.abs(toMm(mark) - x) > 0.05 ? about(mark, wording) : wording.length(mark)
  }
  return { width: said(width), height: said(height), depth: said(depth) }
}

/** `stands 8 in wide, 6 in high, 1 in deep` */
export const sizeWords = (standing: Standing, card: Card, wording: Wording): string =>
  wording.say('figures.stands', sizesOf(standing, card, wording))

/** What a sighted reader takes from the view of the standing card. */
export function standingWords(
  card: Card,
  standing: Standing,
  of: string | undefined,
  wording: Wording,
): string {
  const { say, name } = wording
  const shown = card.structure.pieces.filter((piece) =>
    card.structure.plates.some((plate) => plate.piece === piece.name && standing.pose.has(plate.name)),
  )
  const pieces = shown.map((piece) => {
    const onto = card.structure.bonds
      .filter((b) => card.structure.plates.find((p) => p.name === b.plate)?.piece === piece.name)
      .map((b) => b.onto)
    return say('figures.piece-of-stock', {
      piece: name(piece.name),
      stock: name(piece.stock.name),
      held: onto.length > 0 ? 'yes' : 'no',
      panels: namesOf([...new Set(onto)], wording),
    })
  })
  return [
    say('figures.seen-standing', { card: cardName(card, wording), ...sizesOf(standing, card, wording) }),
    say('figures.pieces', { pieces: pieces.join('; ') }),
    ...card.lettering.map((l) =>
      say('figures.letters-on', { letters: l.letters.join(''), piece: name(l.on) }),
    ),
    ...(of ? [say('figures.accented', { piece: name(of) })] : []),
  ].join(' ')
}
