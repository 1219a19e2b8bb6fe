import type { Envelope } from '../card/card.ts'
import { type Score, scoresOfPiece } from '../card/scores.ts'
import { markText, slantsOfPiece } from '../card/slants.ts'
import type { Piece } from '../card/structure.ts'
import { formatBare } from '../length/format.ts'
import { type Length, larger, type Size, same, shorter, type Unit, zero } from '../length/length.ts'
import type { ProvenCard } from '../lesson/lesson.ts'

/** One measure of a card in one print: what it is, and its numbers without their unit. */
export interface ChartLine {
  /** The piece or the like that it belongs to. */
  readonly owner: string
  readonly kind: 'card' | 'piece' | 'lettering' | 'envelope'
  /** How many of it are cut. */
  readonly count?: number
  /** What is said of the owner besides: its stock, or the letters. */
  readonly note?: string
  /** Empty for the size that the owner is cut to. */
  readonly what: string
  /** The edge that it is measured from. */
  readonly from?: 'left' | 'lower'
  readonly text: string
}

/** Every measure that a chart of sizes has of a card: the shut card, pieces, scores, lettering and envelope. */
export function chartLines({ card, proof }: ProvenCard, unit: Unit): ChartLine[] {
  const { structure, lettering, envelope } = card
  return [
    { owner: 'shut card', kind: 'card', what: '', text: bareSize(proof.closed?.size ?? card.closed, unit) },
    ...structure.pieces.flatMap((piece) => pieceLines(piece, structure, unit)),
    ...lettering.flatMap(({ name, on, gap, marks, letters }): ChartLine[] => {
      const owner = { owner: name, kind: 'lettering' as const, note: `${letters.join('')} on ${on}` }
      return [
        { ...owner, what: 'left edges of the letters, from the left end', text: bareList(marks, unit) },
        { ...owner, what: 'gap', text: formatBare(gap, unit) },
      ]
    }),
    ...(envelope ? envelopeLines(envelope, unit) : []),
  ]
}

const bareSize = ({ width, height }: Size, unit: Unit): string =>
  `${formatBare(width, unit)} × ${formatBare(height, unit)}`

const bareList = (lengths: readonly Length[], unit: Unit): string =>
  lengths.map((x) => formatBare(x, unit)).join(', ')

function pieceLines(piece: Piece, structure: ProvenCard['card']['structure'], unit: Unit): ChartLine[] {
  const { name, count, stock, size } = piece
  const owner = { owner: name, kind: 'piece' as const, count, note: stock.name }
  const scores = scoresOfPiece(structure, name)
  const slants = slantsOfPiece(structure, name)
  return [
    { ...owner, what: '', text: bareSize(size, unit) },
    ...folds.flatMap((fold) =>
      (['width', 'height'] as const).flatMap((along): ChartLine[] => {
        const own = scores.filter((score) => score.fold === fold && score.along === along)
        if (own.length === 0) return []
        const across = along === 'width' ? size.height : size.width
        const from = along === 'width' ? 'left' : 'lower'
        return [{ ...owner, what: fold, from, text: scoresText(own, across, unit) }]
      }),
    ),
    ...folds.flatMap((fold): ChartLine[] => {
      const own = slants.filter((slant) => slant.fold === fold)
      const mark = (at: Parameters<typeof markText>[0]) => markText(at, size, (x) => formatBare(x, unit))
      const text = own.map(({ from, to }) => `${mark(from)} to ${mark(to)}`).join('; ')
      return own.length > 0 ? [{ ...owner, what: `${fold} on the slant`, text }] : []
    }),
  ]
}

const folds = ['mountain', 'valley'] as const

/**
 * Marks of score lines. Lines that do not run right across say from where to where, and those alike stand together:
 * `4, 8 (4 to 8); 5 (0 to 1/2, 6 to 7)`.
 */
function scoresText(scores: readonly Score[], across: Length, unit: Unit): string {
  const marks = new Map<string, { at: Length; extents: string[] }>()
  for (const { at, from, to } of joined(scores)) {
    const mark = marks.get(at.toFraction()) ?? { at, extents: [] }
    const whole = same(from, zero) && same(to, across)
    if (!whole) mark.extents.push(`${formatBare(from, unit)} to ${formatBare(to, unit)}`)
    marks.set(at.toFraction(), mark)
  }
  const runs = new Map<string, Length[]>()
  for (const { at, extents } of marks.values()) {
    const extent = extents.length > 0 ? ` (${extents.join(', ')})` : ''
    runs.set(extent, [...(runs.get(extent) ?? []), at])
  }
  return [...runs].map(([extent, all]) => bareList(all, unit) + extent).join('; ')
}

/** Lines at one mark that go on where the one before ends are one line for a hand. */
function joined(scores: readonly Score[]): Score[] {
  const lines: Score[] = []
  const sorted = [...scores].sort((a, b) => a.at.compare(b.at) || a.from.compare(b.from))
  for (const score of sorted) {
    const last = lines.at(-1)
    if (last && same(last.at, score.at) && !shorter(last.to, score.from))
      lines[lines.length - 1] = { ...last, to: larger(last.to, score.to) }
    else lines.push(score)
  }
  return lines
}

function envelopeLines({ make, stock, sheet, score, inside, scores }: Envelope, unit: Unit): ChartLine[] {
  const owner = { owner: 'envelope', kind: 'envelope' as const, note: stock.name }
  const marks = (along: 'width' | 'height') =>
    bareList(
      scores.filter((one) => one.along === along).map(({ at }) => at),
      unit,
    )
  return [
    { ...owner, what: '', text: bareSize(sheet, unit) },
    ...(scores.length === 0
      ? [{ ...owner, what: 'first score, from the corner', text: formatBare(score, unit) }]
      : [
          { ...owner, what: 'scores', from: 'left' as const, text: marks('width') },
          { ...owner, what: 'scores', from: 'lower' as const, text: marks('height') },
        ]),
    { ...owner, what: 'inside', text: bareSize(inside, unit) },
    { ...owner, what: 'made as', text: make },
  ]
}
