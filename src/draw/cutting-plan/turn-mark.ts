import { colours, weights } from '../ink.ts'
import { area, line, type Mark } from '../mark.ts'
import type { Spot } from '../num.ts'

/** How much wider the box of a number is for the mark of a turn, in mm. */
export const turnRoom = (size: number): number => 0.75 * size

/** A quarter of a circle with a head: what is in hand is turned before this cut. */
export function turnMark([x, y]: Spot, size: number): Mark[] {
  const r = 0.5 * size
  // From the left up and over to the right, round a middle at the lower right.
  const at = (turn: number): Spot => [
    x + r / 2 - r * Math.cos((turn * Math.PI) / 2),
    y + r / 2 - r * Math.sin((turn * Math.PI) / 2),
  ]
  const steps = [0, 0.25, 0.5, 0.75]
  const [tipX, tipY] = at(1)
  const head = 0.22 * size
  return [
    ...steps.map((turn) =>
      line(at(turn), at(turn + 0.25), {
        class: 'turn',
        width: weights.dimension * 1.4,
        colour: colours.rust,
        cap: 'round',
      }),
    ),
    area(
      [
        [
          [tipX + head, tipY],
          [tipX - head * 0.6, tipY - head * 0.8],
          [tipX - head * 0.6, tipY + head * 0.8],
        ],
      ],
      { class: 'turn', fill: colours.rust },
    ),
  ]
}
