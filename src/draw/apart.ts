import type { Unit } from '../length/length.ts'
import type { ProvenCard } from '../lesson/lesson.ts'
import type { FigureFinding } from './figure.ts'
import type { FigureOptions } from './fit.ts'
import type { Sheet } from './frame.ts'

/** The pieces of a card lifted off one another in the order in which they are put together. */
export function drawApart(
  _card: ProvenCard,
  _of: string | undefined,
  _unit: Unit,
  _options: FigureOptions,
): Sheet | FigureFinding {
  return {
    rule: 'figure-not-drawn',
    severity: 'warning',
    message: 'A figure that shows `apart` cannot be drawn yet',
  }
}
