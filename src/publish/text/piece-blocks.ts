import type { Envelope, Lettering } from '../../card/card.ts'
import { hingesOf, type Score, scoresOf } from '../../card/scores.ts'
import type { Piece, Structure } from '../../card/structure.ts'
import { formatBare, formatLength, formatLengths, formatSize } from '../../length/format.ts'
import { groupBy } from '../../length/group-by.ts'
import { same, type Unit, zero } from '../../length/length.ts'
import type { ProvenCard } from '../../lesson/lesson.ts'

const edges = { width: 'the left edge', height: 'the lower edge' }

/** A line for each piece to cut, with its scores, for each row of letters, and for the envelope. */
export function pieceLines({ card }: ProvenCard, unit: Unit): string[] {
  const { structure, lettering, envelope } = card
  return [
    ...structure.pieces.map((piece) => pieceLine(piece, structure, unit)),
    ...lettering.map((row) => letterLine(row, unit)),
    ...(envelope ? [envelopeLine(envelope, unit)] : []),
  ]
}

/** `side strip, 2 of them: 3/4 × 5 in, patterned paper, pattern upright` */
function pieceLine(piece: Piece, structure: Structure, unit: Unit): string {
  const { name, count, size, stock, cuts } = piece
  const holes = structure.plates.some((plate) => plate.piece === name && plate.holes.length > 0)
  return [
    `${name}${count > 1 ? `, ${count} of them` : ''}: ${formatSize(size, unit)}, ${stock.name}${stock.direction === 'upright' ? ', pattern upright' : ''}`,
    ...scoreWords(piece, structure, unit),
    ...(cuts.length > 0 || holes ? ['with cuts inside it'] : []),
  ].join('; ')
}

/** `mountain scores at 3/4 and 7 3/4 in from the left edge`, one for each kind of line. */
function scoreWords(piece: Piece, structure: Structure, unit: Unit): string[] {
  const hinges = hingesOf(structure, piece.name)
  return (['mountain', 'valley'] as const).flatMap((fold) => {
    const own = hinges.filter((hinge) => hinge.fold === fold)
    const scores = scoresOf(own)
    const kinds = groupBy(scores, ({ along, from, to }) =>
      [along, from.toFraction(), to.toFraction()].join(' '),
    )
    return [
      ...[...kinds.values()].map((some) => scoreLine(some, piece, unit)),
      ...(scores.length < own.length ? [`${fold} scores on the slant`] : []),
    ]
  })
}

function scoreLine(scores: readonly Score[], { size }: Piece, unit: Unit): string {
  const [first] = scores
  if (!first) return ''
  const { fold, along, from, to } = first
  const marks = scores.map(({ at }) => at).filter((at, i, all) => !(i > 0 && all[i - 1]?.equals(at)))
  const across = along === 'width' ? size.height : size.width
  const whole = same(from, zero) && same(to, across)
  const part = whole ? '' : `, from ${formatBare(from, unit)} to ${formatLength(to, unit)} only`
  return `${fold} ${marks.length > 1 ? 'scores' : 'score'} at ${formatLengths(marks, unit)} from ${edges[along]}${part}`
}

const letterLine = ({ on, letters, gap, marks }: Lettering, unit: Unit): string =>
  `letters ${letters.join('')} on the ${on}: left edges at ${formatLengths(marks, unit)} from the left end, gaps ${formatLength(gap, unit)}`

function envelopeLine({ make, stock, sheet, score, scores, inside }: Envelope, unit: Unit): string {
  const lines = groupBy(scores, ({ along }) => along)
  return [
    `envelope: ${formatSize(sheet, unit)}, ${stock.name}`,
    ...(make === 'diagonal'
      ? [`first score ${formatLength(score, unit)} from the corner, along both edges`]
      : [...lines].map(
          ([along, some]) =>
            `scores at ${formatLengths(
              some.map(({ at }) => at),
              unit,
            )} from ${edges[along]}`,
        )),
    `inside ${formatSize(inside, unit)}`,
  ].join('; ')
}
