import { s } from 'hastscript'
import { boxAround } from './box.ts'
import { colours } from './ink.ts'
import { arrow, type Mark } from './mark.ts'
import { num, type Spot } from './num.ts'

/**
 * An arrow that shows a panel swing over from one place to another: a bow as high as a quarter of the way, on the left of
 * it, with a slim head.
 */
export function swing(from: Spot, to: Spot, colour: string = colours.rust): Mark[] {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]]
  const long = Math.hypot(dx, dy)
  if (long < 1) return []
  const bow: Spot = [from[0] + dx / 2 + dy * 0.5, from[1] + dy / 2 - dx * 0.5]
  const [tx, ty] = [to[0] - bow[0], to[1] - bow[1]]
  const end = Math.hypot(tx, ty)
  // The line ends inside the head, not at its tip.
  const stop: Spot = [to[0] - (tx / end) * 1.2, to[1] - (ty / end) * 1.2]
  const top: Spot = [(from[0] + 2 * bow[0] + to[0]) / 4, (from[1] + 2 * bow[1] + to[1]) / 4]
  return [
    {
      node: () =>
        s('path', {
          class: 'movement',
          d: `M${num(from[0])} ${num(from[1])}Q${num(bow[0])} ${num(bow[1])} ${num(stop[0])} ${num(stop[1])}`,
          stroke: colour,
          'stroke-width': '0.35',
          'stroke-linecap': 'round',
        }),
      box: boxAround([from, to, top], 0.2),
    },
    arrow(to, [tx / end, ty / end], colour),
  ]
}
