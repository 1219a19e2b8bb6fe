import type { Unit } from '../length/length.ts'
import type { ProvenCard } from '../lesson/lesson.ts'
import type { FigureFinding } from './figure.ts'
import type { FigureOptions } from './fit.ts'
import type { Sheet } from './frame.ts'

/** The shut card seen along its folds, its layers drawn thicker than they are. */
export function drawEdgeOn(
  _card: ProvenCard,
  _of: string | undefined,
  _unit: Unit,
  _options: FigureOptions,
): Sheet | FigureFinding {
  return {
    rule: 'figure-not-drawn',
    severity: 'warning',
    message: 'A figure that shows `edge` cannot be drawn yet',
  }
}
