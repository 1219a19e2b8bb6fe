import type { Envelope } from '../card/card.ts'
import { type Score, scoresOfPiece } from '../card/scores.ts'
import { markText, type Slant, slantsOfPiece } from '../card/slants.ts'
import type { Piece, Segment } from '../card/structure.ts'
import { formatBare, formatGrid, formatLength, formatLengths, formatSize } from '../length/format.ts'
import { same, type Unit, zero } from '../length/length.ts'
import type { FilledLesson, ProvenCard } from '../lesson/lesson.ts'
import { atMark } from './card-measures.ts'
import { count, type Listing, measure, type Section, withoutEmptyColumns, words } from './listing.ts'
import { mailingSections } from './mailing-listing.ts'
import { movementWords } from './movement.ts'

/** The measures of a lesson as tables: pieces, scores, the shut and the standing card, lettering, envelope, post. */
export function measuresListing(lesson: FilledLesson): Listing {
  const several = lesson.cards.length > 1
  return {
    title: lesson.frontMatter.title,
    intro: `Every measure is on a ruler of ${formatGrid(lesson.grid)}.`,
    sections: lesson.cards.flatMap((proven) =>
      cardSections(proven, lesson).map((section) => ({
        ...withoutEmptyColumns(section),
        heading: several ? `${section.heading} (${proven.card.name})` : section.heading,
      })),
    ),
  }
}

function cardSections(proven: ProvenCard, { unit }: FilledLesson): Section[] {
  const { structure, lettering, envelope, mailing } = proven.card
  const sections: Section[] = [
    { heading: 'The card', columns: [words('what'), measure('measure')], rows: cardRows(proven) },
    {
      heading: 'Pieces to cut',
      columns: [words('piece'), count('count'), measure('width × height'), words('stock')],
      rows: structure.pieces.map((p) => [p.name, String(p.count), formatSize(p.size, unit), p.stock.name]),
    },
    {
      heading: 'Scores',
      columns: [
        words('piece'),
        measure('at'),
        words('from'),
        measure('line'),
        words('fold'),
        words('score on'),
      ],
      rows: structure.pieces.flatMap((piece) =>
        scoresOfPiece(structure, piece.name).map((score) => scoreRow(piece, score, unit)),
      ),
    },
    {
      heading: 'Slanting scores',
      columns: [words('piece'), words('from'), words('to'), words('fold'), words('score on')],
      rows: structure.pieces.flatMap((piece) =>
        slantsOfPiece(structure, piece.name).map((slant) => slantRow(piece, slant, unit)),
      ),
      note: 'Marks on an upright edge are measured from the lower edge, marks on a level edge from the left edge.',
    },
    {
      heading: 'Cuts inside a piece',
      columns: [words('piece'), words('from'), words('to')],
      rows: structure.pieces.flatMap((piece) => piece.cuts.map((cut) => cutRow(piece, cut, unit))),
      note: 'Across from the left edge, up from the lower edge, the inside or front facing you.',
    },
    {
      heading: 'Lettering',
      columns: [words('lettering'), words('on'), measure('gap'), measure('left edges, from the left end')],
      rows: lettering.map((l) => [l.name, l.on, formatLength(l.gap, unit), formatLengths(l.marks, unit)]),
    },
    {
      heading: 'Envelope',
      columns: [words('what'), measure('measure')],
      rows: envelope ? envelopeRows(envelope, unit) : [],
    },
    ...(proven.proof.closed ? mailingSections(mailing) : []),
  ]
  return sections.filter(({ rows }) => rows.length > 0)
}

/** What a card comes to: a row for each thing to know of it. */
export function cardRows({ card, proof }: ProvenCard): string[][] {
  const { unit, grid } = card
  const { closed, standing } = proof
  const mark = (x: number) => atMark(x, grid)
  return [
    ['fold', card.fold],
    ['shut', formatSize(closed?.size ?? card.closed, unit)],
    ...(closed
      ? [[closed.isFlat ? 'thick when shut' : 'deep when shut', formatLength(closed.thickness, unit)]]
      : []),
    ...(standing
      ? [
          ['standing', formatSize({ width: mark(standing.width), height: mark(standing.height) }, unit)],
          ['standing depth', formatLength(mark(standing.depth), unit)],
        ]
      : []),
    ...(closed ? [['how it moves', movementWords(card.structure, proof)]] : []),
  ]
}

const edge = { width: 'the left edge', height: 'the lower edge' }

/** What a hand calls the two sides: those of the base are the inside and the outside of the card. */
const sideWords = {
  base: { face: 'the inside', back: 'the outside' },
  other: { face: 'the front', back: 'the back' },
}

function scoreRow(
  { name, kind, size }: Piece,
  { at, along, from, to, fold, side }: Score,
  unit: Unit,
): string[] {
  const whole = same(from, zero) && same(to, along === 'width' ? size.height : size.width)
  return [
    name,
    formatLength(at, unit),
    edge[along],
    whole ? 'right across' : `${formatBare(from, unit)} to ${formatLength(to, unit)}`,
    fold,
    sideWords[kind === 'base' ? 'base' : 'other'][side],
  ]
}

const slantRow = ({ name, kind, size }: Piece, { from, to, fold, side }: Slant, unit: Unit): string[] => [
  name,
  ...[from, to].map((end) => markText(end, size, (x) => formatLength(x, unit))),
  fold,
  sideWords[kind === 'base' ? 'base' : 'other'][side],
]

const cutRow = ({ name }: Piece, { from, to }: Segment, unit: Unit): string[] => [
  name,
  ...[from, to].map(({ x, y }) => `${formatLength(x, unit)} across, ${formatLength(y, unit)} up`),
]

function envelopeRows({ make, stock, sheet, score, inside, scores }: Envelope, unit: Unit): string[][] {
  return [
    ['make', make],
    ['stock', stock.name],
    ['sheet', formatSize(sheet, unit)],
    ...(scores.length > 0
      ? scores.map(({ at, along }) => [`score, from ${edge[along]}`, formatLength(at, unit)])
      : [['first score, from the corner', formatLength(score, unit)]]),
    ['inside', formatSize(inside, unit)],
  ]
}
