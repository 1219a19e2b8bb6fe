import type { Unit } from '../length/length.ts'
import type { ProvenCard } from '../lesson/lesson.ts'
import type { FigureFinding } from './figure.ts'
import type { FigureOptions } from './fit.ts'
import type { Sheet } from './frame.ts'

/** How the card is folded: a strip of three to six stages, from the flat sheet to the shut or the standing card. */
export function drawFolding(
  _card: ProvenCard,
  _of: string | undefined,
  _unit: Unit,
  _options: FigureOptions,
): Sheet | FigureFinding {
  return {
    rule: 'figure-not-drawn',
    severity: 'warning',
    message: 'A figure that shows `folding` cannot be drawn yet',
  }
}
