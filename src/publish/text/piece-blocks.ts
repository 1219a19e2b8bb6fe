import type { Envelope, Lettering } from '../../card/card.ts'
import { hingesOf, type Score, scoresOf } from '../../card/scores.ts'
import type { Piece, Structure } from '../../card/structure.ts'
import { groupBy } from '../../length/group-by.ts'
import { same, zero } from '../../length/length.ts'
import type { ProvenCard } from '../../lesson/lesson.ts'
import type { Wording } from '../../wording/wording.ts'

/** A line for each piece to cut, with its scores, for each row of letters, and for the envelope. */
export function pieceLines({ card }: ProvenCard, wording: Wording): string[] {
  const { structure, lettering, envelope } = card
  return [
    ...structure.pieces.map((piece) => pieceLine(piece, structure, wording)),
    ...lettering.map((row) => letterLine(row, wording)),
    ...(envelope ? [envelopeLine(envelope, wording)] : []),
  ]
}

/** `side strip, 2 of them: 3/4 × 5 in, patterned paper, pattern upright` */
function pieceLine(piece: Piece, structure: Structure, wording: Wording): string {
  const { name, count, size, stock, cuts } = piece
  const holes = structure.plates.some((plate) => plate.piece === name && plate.holes.length > 0)
  const paper = wording.name(stock.name)
  return [
    wording.say('text.piece', {
      piece: wording.name(name),
      count,
      size: wording.size(size),
      stock: stock.direction === 'upright' ? wording.say('handout.stock-upright', { stock: paper }) : paper,
    }),
    ...scoreWords(piece, structure, wording),
    ...(cuts.length > 0 || holes ? [wording.say('text.with-cuts')] : []),
  ].join('; ')
}

/** `mountain scores at 3/4 and 7 3/4 in from the left edge`, one for each kind of line. */
function scoreWords(piece: Piece, structure: Structure, wording: Wording): string[] {
  const hinges = hingesOf(structure, piece.name)
  return (['mountain', 'valley'] as const).flatMap((fold) => {
    const own = hinges.filter((hinge) => hinge.fold === fold)
    const scores = scoresOf(own)
    const kinds = groupBy(scores, ({ along, from, to }) =>
      [along, from.toFraction(), to.toFraction()].join(' '),
    )
    return [
      ...[...kinds.values()].map((some) => scoreLine(some, piece, wording)),
      ...(scores.length < own.length ? [wording.say('text.scores-slanted', { fold })] : []),
    ]
  })
}

function scoreLine(scores: readonly Score[], { size }: Piece, wording: Wording): string {
  const [first] = scores
  if (!first) return ''
  const { fold, along, from, to } = first
  const marks = scores.map(({ at }) => at).filter((at, i, all) => !(i > 0 && all[i - 1]?.equals(at)))
  const across = along === 'width' ? size.height : size.width
  const said = { fold, along, count: marks.length, marks: wording.lengths(marks) }
  return same(from, zero) && same(to, across)
    ? wording.say('text.scores', said)
    : wording.say('text.scores-part', { ...said, from: wording.bare(from), to: wording.length(to) })
}

const letterLine = ({ on, letters, gap, marks }: Lettering, wording: Wording): string =>
  wording.say('text.letters', {
    letters: letters.join(''),
    piece: wording.name(on),
    marks: wording.lengths(marks),
    gap: wording.length(gap),
  })

function envelopeLine({ make, stock, sheet, score, scores, inside }: Envelope, wording: Wording): string {
  const lines = groupBy(scores, ({ along }) => along)
  return [
    wording.say('text.piece', {
      piece: wording.name('envelope'),
      count: 1,
      size: wording.size(sheet),
      stock: wording.name(stock.name),
    }),
    ...(make === 'diagonal'
      ? [wording.say('handout.envelope-first-score', { score: wording.length(score) })]
      : [...lines].map(([along, some]) =>
          wording.say('text.envelope-scores', { along, marks: wording.lengths(some.map(({ at }) => at)) }),
        )),
    wording.say('handout.envelope-inside', { inside: wording.size(inside) }),
  ].join('; ')
}
