import type { Proof } from '../../fold/pose.ts'
import { listOf, suggestWord } from '../../length/finding.ts'
import { figureNames } from '../../lesson/figure-target.ts'
import type { ProvenCard } from '../../lesson/lesson.ts'
import type { FigureFinding } from '../figure.ts'
import { type Way, wayOfCard, wayOfPiece } from './way.ts'

/**
 * The way that a figure of folding shows, or why there is none.
 *
 * @param of absent for the whole card, or a piece that is folded alone.
 */
export function wayTo(card: ProvenCard, of: string | undefined): Way | FigureFinding {
  const known = ways.get(card.proof) ?? new Map<string | undefined, Way | FigureFinding>()
  ways.set(card.proof, known)
  const way = known.get(of) ?? found(card, of)
  known.set(of, way)
  return way
}

const ways = new WeakMap<Proof, Map<string | undefined, Way | FigureFinding>>()

function found(card: ProvenCard, of: string | undefined): Way | FigureFinding {
  const { pieces, hinges, plates } = card.card.structure
  if (of === undefined || of === card.card.name) return wayOfCard(card) ?? noWay
  const pieceOf = (name: string): string | undefined => plates.find((plate) => plate.name === name)?.piece
  const folding = pieces
    .map(({ name }) => name)
    .filter((name) => hinges.some(({ between }) => pieceOf(between[0]) === name))
  const piece = pieces.find(({ name }) => name === of)
  if (!figureNames(card.card).includes(of)) return isUnknown(of, folding)
  if (!piece || !folding.includes(of)) return hasNoCrease(of, folding)
  return wayOfPiece(card, piece) ?? noWay
}

const noWay: FigureFinding = {
  rule: 'figure-not-drawn',
  severity: 'error',
  message: 'No way was found to fold this from the flat sheet, so its folding cannot be drawn',
  suggestion: 'Cure what the check says of its folding first, or show `flat` and `standing` instead',
}

const isUnknown = (of: string, folding: readonly string[]): FigureFinding => ({
  rule: 'unknown-name',
  severity: 'error',
  message: `Unexpected name \`${of}\`, expected a piece of this card that has creases`,
  suggestion: suggestWord(of, folding),
})

const hasNoCrease = (of: string, folding: readonly string[]): FigureFinding => ({
  rule: 'figure-not-drawn',
  severity: 'error',
  message:
    of === 'envelope'
      ? 'The folding of an envelope is drawn with the envelope'
      : `\`${of}\` has no creases, so there is no folding to draw`,
  suggestion:
    of === 'envelope'
      ? 'Show `envelope` instead'
      : folding.length > 0
        ? `Leave \`of\` out to fold the whole card, or choose ${listOf(
            folding.map((name) => `\`${name}\``),
            'or',
          )}`
        : 'Show `flat` instead',
})
