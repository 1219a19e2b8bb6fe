import type { Unit } from '../length/length.ts'
import type { ProvenCard } from '../lesson/lesson.ts'
import type { FigureFinding } from './figure.ts'
import type { FigureOptions } from './fit.ts'
import type { Sheet } from './frame.ts'

/** Letters on their strip, and where each of them starts. */
export function drawLettering(
  _card: ProvenCard,
  _of: string | undefined,
  _unit: Unit,
  _options: FigureOptions,
): Sheet | FigureFinding {
  return {
    rule: 'figure-not-drawn',
    severity: 'warning',
    message: 'A figure that shows `lettering` cannot be drawn yet',
  }
}
