import type { Envelope } from '../card/card.ts'
import { type Score, scoresOfPiece } from '../card/scores.ts'
import { slantsOfPiece } from '../card/slants.ts'
import type { Fold, Piece } from '../card/structure.ts'
import { type Length, larger, type Size, same, shorter, zero } from '../length/length.ts'
import type { ProvenCard } from '../lesson/lesson.ts'
import type { Wording } from '../wording/wording.ts'
import { markWords } from './size-chart-marks.ts'
import { chartSigns } from './size-chart-signs.ts'

/** One measure of a card in one print: what it is, and its numbers without their unit. */
export interface ChartLine {
  /** The piece or the like that it belongs to. */
  readonly owner: string
  readonly kind: 'card' | 'piece' | 'lettering' | 'envelope'
  /** How many of it are cut. */
  readonly count?: number
  /** What is said of the owner besides: its stock, or the letters. */
  readonly note?: string
  readonly what:
    | 'cut to'
    | Fold
    | `${Fold} on the slant`
    | 'letters'
    | 'gap'
    | 'scores'
    | 'first score'
    | 'inside'
    | 'made as'
  /** The edge that it is measured from. */
  readonly from?: 'left' | 'lower'
  readonly text: string
}

/** Every measure that a chart of sizes has of a card: the shut card, pieces, scores, lettering and envelope. */
export function chartLines({ card, proof }: ProvenCard, wording: Wording): ChartLine[] {
  const { structure, lettering, envelope } = card
  return [
    {
      owner: wording.say('chart.shut-card'),
      kind: 'card',
      what: 'cut to',
      text: bareSize(proof.closed?.size ?? card.closed, wording),
    },
    ...structure.pieces.flatMap((piece) => pieceLines(piece, structure, wording)),
    ...lettering.flatMap(({ name, on, gap, marks, letters }): ChartLine[] => {
      const note = wording.say('chart.letters-on', { letters: letters.join(''), piece: wording.name(on) })
      const owner = { owner: wording.name(name), kind: 'lettering' as const, note }
      return [
        { ...owner, what: 'letters', text: bareList(marks, wording) },
        { ...owner, what: 'gap', text: wording.bare(gap) },
      ]
    }),
    ...(envelope ? envelopeLines(envelope, wording) : []),
  ]
}

const bareSize = ({ width, height }: Size, { bare }: Wording): string => `${bare(width)} × ${bare(height)}`

const bareList = (lengths: readonly Length[], wording: Wording): string =>
  lengths.map(wording.bare).join(chartSigns(wording).item)

function pieceLines(piece: Piece, structure: ProvenCard['card']['structure'], wording: Wording): ChartLine[] {
  const { name, count, stock, size } = piece
  const owner = { owner: wording.name(name), kind: 'piece' as const, count, note: wording.name(stock.name) }
  const scores = scoresOfPiece(structure, name)
  const slants = slantsOfPiece(structure, name)
  return [
    { ...owner, what: 'cut to', text: bareSize(size, wording) },
    ...folds.flatMap((fold) =>
      (['width', 'height'] as const).flatMap((along): ChartLine[] => {
        const own = scores.filter((score) => score.fold === fold && score.along === along)
        if (own.length === 0) return []
        const across = along === 'width' ? size.height : size.width
        const from = along === 'width' ? 'left' : 'lower'
        return [{ ...owner, what: fold, from, text: scoresText(own, across, wording) }]
      }),
    ),
    ...folds.flatMap((fold): ChartLine[] => {
      const own = slants.filter((slant) => slant.fold === fold)
      const mark = (at: Parameters<typeof markWords>[0]) => markWords(at, size, wording)
      const text = own
        .map(({ from, to }) => wording.say('chart.slant', { from: mark(from), to: mark(to) }))
        .join(chartSigns(wording).run)
      return own.length > 0 ? [{ ...owner, what: `${fold} on the slant`, text }] : []
    }),
  ]
}

const folds = ['mountain', 'valley'] as const

/**
 * Marks of score lines. Lines that do not run right across say from where to where, and those alike stand together:
 * `4, 8 (4 to 8); 5 (0 to 1/2, 6 to 7)`.
 */
function scoresText(scores: readonly Score[], across: Length, wording: Wording): string {
  const signs = chartSigns(wording)
  const marks = new Map<string, { at: Length; extents: string[] }>()
  for (const { at, from, to } of joined(scores)) {
    const mark = marks.get(at.toFraction()) ?? { at, extents: [] }
    const whole = same(from, zero) && same(to, across)
    if (!whole)
      mark.extents.push(wording.say('chart.extent', { from: wording.bare(from), to: wording.bare(to) }))
    marks.set(at.toFraction(), mark)
  }
  const runs = new Map<string, Length[]>()
  for (const { at, extents } of marks.values()) {
    const extent = extents.length > 0 ? ` (${extents.join(signs.item)})` : ''
    runs.set(extent, [...(runs.get(extent) ?? []), at])
  }
  return [...runs].map(([extent, all]) => bareList(all, wording) + extent).join(signs.run)
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

function envelopeLines(
  { make, stock, sheet, score, inside, scores }: Envelope,
  wording: Wording,
): ChartLine[] {
  const owner = { owner: wording.name('envelope'), kind: 'envelope' as const, note: wording.name(stock.name) }
  const marks = (along: 'width' | 'height') =>
    bareList(
      scores.filter((one) => one.along === along).map(({ at }) => at),
      wording,
    )
  const lines: ChartLine[] =
    scores.length === 0
      ? [{ ...owner, what: 'first score', text: wording.bare(score) }]
      : [
          { ...owner, what: 'scores', from: 'left', text: marks('width') },
          { ...owner, what: 'scores', from: 'lower', text: marks('height') },
        ]
  return [
    { ...owner, what: 'cut to', text: bareSize(sheet, wording) },
    ...lines,
    { ...owner, what: 'inside', text: bareSize(inside, wording) },
    { ...owner, what: 'made as', text: wording.say('chart.make', { make }) },
  ]
}
