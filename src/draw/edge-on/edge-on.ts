import { suggestWord } from '../../length/finding.ts'
import type { ProvenCard } from '../../lesson/lesson.ts'
import type { Wording } from '../../wording/wording.ts'
import type { FigureFinding } from '../figure.ts'
import type { FigureOptions } from '../fit.ts'
import type { Sheet } from '../frame.ts'
import { drawEdgeOfBox } from './box-figure.ts'
import { drawEdgeOfFlat } from './flat.ts'

/**
 * The shut card seen along its folds, its layers drawn thicker than they are.
 *
 * @param of a piece or a panel to draw with a heavier outline; the card is then cut where it lies.
 */
export function drawEdgeOn(
  { card, proof }: ProvenCard,
  of: string | undefined,
  wording: Wording,
  options: FigureOptions,
): Sheet | FigureFinding {
  const { closed } = proof
  const { pieces, plates } = card.structure
  const known = [...pieces, ...plates].map(({ name }) => name)
  const accent = of === card.name ? undefined : of
  if (accent !== undefined && !known.includes(accent))
    return {
      rule: 'unknown-name',
      severity: 'error',
      message: `Unexpected name \`${accent}\`, expected a piece of this card`,
      suggestion: suggestWord(accent, [...new Set(known)]),
    }
  if (!closed)
    return {
      rule: 'figure-not-drawn',
      severity: 'error',
      message: 'This figure needs a card that folds, and this one does not yet',
      suggestion: 'Cure what the check says of its folding first',
    }
  const own = plates.filter(({ name, piece }) => piece === accent || name === accent).map(({ name }) => name)
  const draw = closed.isFlat ? drawEdgeOfFlat : drawEdgeOfBox
  return draw(card, closed, own, { wording, options, of: accent })
}
