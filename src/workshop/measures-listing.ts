import type { Envelope } from '../card/card.ts'
import { type Score, scoresOfPiece } from '../card/scores.ts'
import { markText, type Slant, slantsOfPiece } from '../card/slants.ts'
import type { Piece, Segment } from '../card/structure.ts'
import { same, zero } from '../length/length.ts'
import type { FilledLesson, ProvenCard } from '../lesson/lesson.ts'
import type { Wording } from '../wording/wording.ts'
import { cardCells } from './card-rows.ts'
import {
  type Column,
  count,
  type Listing,
  measure,
  type Section,
  withoutEmptyColumns,
  words,
} from './listing.ts'
import { mailingSections } from './mailing-listing.ts'

/** The measures of a lesson as tables: pieces, scores, the shut and the standing card, lettering, envelope, post. */
export function measuresListing({ cards, wording, frontMatter, grid }: FilledLesson): Listing {
  const { say, name } = wording
  return {
    title: frontMatter.title,
    intro: say('kit.ruler', { grid: wording.grid(grid) }),
    sections: cards.flatMap((proven) =>
      cardSections(proven, wording).map((section) => ({
        ...withoutEmptyColumns(section),
        heading:
          cards.length > 1
            ? say('kit.of-card', { heading: section.heading, card: name(proven.card.name) })
            : section.heading,
      })),
    ),
  }
}

function cardSections(proven: ProvenCard, wording: Wording): Section[] {
  const { structure, lettering, envelope, mailing } = proven.card
  const { say } = wording
  const piece: Column = words(say('kit.piece'))
  const whatAndMeasure = [words(say('kit.what')), measure(say('kit.measure'))]
  const fromTo = [words(say('kit.from')), words(say('kit.to'))]
  const foldAndSide = [words(say('kit.fold')), words(say('kit.score-on'))]
  const sections: Section[] = [
    { heading: say('kit.the-card'), columns: whatAndMeasure, rows: cardCells(proven, wording) },
    {
      heading: say('kit.pieces-to-cut'),
      columns: [piece, count(say('kit.count')), measure(say('kit.width-height')), words(say('kit.stock'))],
      rows: structure.pieces.map((p) => [
        wording.name(p.name),
        String(p.count),
        wording.size(p.size),
        wording.name(p.stock.name),
      ]),
    },
    {
      heading: say('kit.scores'),
      columns: [
        piece,
        measure(say('kit.at')),
        words(say('kit.measured-from')),
        measure(say('kit.line')),
        ...foldAndSide,
      ],
      rows: structure.pieces.flatMap((one) =>
        scoresOfPiece(structure, one.name).map((score) => scoreRow(one, score, wording)),
      ),
    },
    {
      heading: say('kit.slanting-scores'),
      columns: [piece, ...fromTo, ...foldAndSide],
      rows: structure.pieces.flatMap((one) =>
        slantsOfPiece(structure, one.name).map((slant) => slantRow(one, slant, wording)),
      ),
      note: say('kit.slanting-note'),
    },
    {
      heading: say('kit.cuts-inside'),
      columns: [piece, ...fromTo],
      rows: structure.pieces.flatMap((one) => one.cuts.map((cut) => cutRow(one, cut, wording))),
      note: say('kit.cuts-note'),
    },
    {
      heading: say('kit.lettering'),
      columns: [
        words(say('kit.lettering-name')),
        words(say('kit.on')),
        measure(say('kit.gap')),
        measure(say('kit.letter-marks')),
      ],
      rows: lettering.map((l) => [
        wording.name(l.name),
        wording.name(l.on),
        wording.length(l.gap),
        wording.lengths(l.marks),
      ]),
    },
    {
      heading: say('kit.envelope'),
      columns: whatAndMeasure,
      rows: envelope ? envelopeRows(envelope, wording) : [],
    },
    ...(proven.proof.closed ? mailingSections(mailing, wording) : []),
  ]
  return sections.filter(({ rows }) => rows.length > 0)
}

/** What a hand calls the two sides: those of the base are the inside and the outside of the card. */
const sides = {
  base: { face: 'inside', back: 'outside' },
  other: { face: 'front', back: 'back' },
} as const

const sideWords = ({ kind }: Piece, side: Score['side'], { say }: Wording): string =>
  say('kit.side', { side: sides[kind === 'base' ? 'base' : 'other'][side] })

function scoreRow(piece: Piece, { at, along, from, to, fold, side }: Score, wording: Wording): string[] {
  const { name, size } = piece
  const { say, bare, length } = wording
  const whole = same(from, zero) && same(to, along === 'width' ? size.height : size.width)
  return [
    wording.name(name),
    length(at),
    say('kit.edge', { along }),
    whole ? say('kit.right-across') : say('kit.from-to', { from: bare(from), to: length(to) }),
    say('kit.bend', { fold }),
    sideWords(piece, side, wording),
  ]
}

const slantRow = (piece: Piece, { from, to, fold, side }: Slant, wording: Wording): string[] => [
  wording.name(piece.name),
  ...[from, to].map((end) => markText(end, piece.size, wording)),
  wording.say('kit.bend', { fold }),
  sideWords(piece, side, wording),
]

const cutRow = ({ name }: Piece, { from, to }: Segment, wording: Wording): string[] => [
  wording.name(name),
  ...[from, to].map(({ x, y }) =>
    wording.say('kit.across-up', { across: wording.length(x), up: wording.length(y) }),
  ),
]

function envelopeRows({ make, stock, sheet, score, inside, scores }: Envelope, wording: Wording): string[][] {
  const { say, length, size } = wording
  const row = (name: string, said: string): string[] => [say('kit.row', { row: name }), said]
  return [
    row('make', say('kit.make', { make })),
    row('stock', wording.name(stock.name)),
    row('sheet', size(sheet)),
    ...(scores.length > 0
      ? scores.map(({ at, along }) => row(`score_${along}`, length(at)))
      : [row('first_score', length(score))]),
    row('inside', size(inside)),
  ]
}
