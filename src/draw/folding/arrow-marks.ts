import { s } from 'hastscript'
import { boxAround } from '../box.ts'
import { colours } from '../ink.ts'
import type { Mark } from '../mark.ts'
import { closedPath, num, openPath, type Spot } from '../num.ts'

/** Widths in mm: of the line, and of the paper left clear round it. */
const [wide, clear] = [0.4, 0.55]
/** A slim head: its length, and half its width at the foot. */
const [long, half] = [2.4, 0.5]

/** Room round a path that its line and head take. */
const arrowRoom = half + clear

/** A line along a path with a head: full for a valley, half and open for a mountain. */
export function pathArrow(
  spots: readonly Spot[],
  head: 'full' | 'half',
  colour: string = colours.rust,
): Mark[] {
  const tip = spots.at(-1)
  if (!tip || lengthOf(spots) < 2) return []
  const size = Math.min(1, lengthOf(spots) / (2 * long))
  // The head points along the last of the line, not along its last step.
  const foot = before(spots, long * size)
  const far = Math.hypot(tip[0] - foot[0], tip[1] - foot[1]) || 1
  const [dx, dy] = [(tip[0] - foot[0]) / far, (tip[1] - foot[1]) / far]
  const side = (k: number): Spot => [
    tip[0] - dx * long * size - dy * half * size * k,
    tip[1] - dy * long * size + dx * half * size * k,
  ]
  const shaft = head === 'full' ? [...upTo(spots, long * size * 0.8)] : [...spots]
  const stroke = (d: string, width: number, ink: string, name: string): Mark => ({
    node: () =>
      s('path', {
        class: name,
        d,
        stroke: ink,
        'stroke-width': num(width),
        'stroke-linecap': 'round',
        'stroke-linejoin': 'round',
      }),
    box: boxAround(spots, arrowRoom),
  })
  const solid = closedPath([tip, side(1), side(-1)])
  const barb = openPath([side(2.6), tip])
  return [
    stroke(openPath(shaft), wide + 2 * clear, colours.paper, 'halo'),
    stroke(head === 'full' ? solid : barb, 2 * clear + (head === 'full' ? 0 : wide), colours.paper, 'halo'),
    stroke(openPath(shaft), wide, colour, 'movement'),
    head === 'full'
      ? {
          node: () => s('path', { class: 'arrow', d: solid, fill: colour }),
          box: boxAround([tip, side(1), side(-1)]),
        }
      : stroke(barb, wide, colour, 'arrow half'),
  ]
}

const lengthOf = (spots: readonly Spot[]): number =>
  spots.reduce((sum, [x, y], i) => {
    const [px, py] = spots[i - 1] ?? [x, y]
    return sum + Math.hypot(x - px, y - py)
  }, 0)

/** The path without the last of it. */
function upTo(spots: readonly Spot[], cut: number): Spot[] {
  const rest = [...spots]
  let left = cut
  while (rest.length > 1) {
    const [a, b] = [rest.at(-2) as Spot, rest.at(-1) as Spot]
    const step = Math.hypot(b[0] - a[0], b[1] - a[1])
    rest.pop()
    if (step > left)
      return [...rest, [b[0] + ((a[0] - b[0]) * left) / step, b[1] + ((a[1] - b[1]) * left) / step]]
    left -= step
  }
  return rest
}

const before = (spots: readonly Spot[], cut: number): Spot => upTo(spots, cut).at(-1) ?? [0, 0]

/** Half the width of the sign, the radius of its loop, and its height above and below its line. */
export const turnSign = { width: 11.5, loop: 2.1 } as const

/** The sign that says to turn the work over: an arrow with a loop in it, from its left end at `at`. */
export function turnOverSign([x, y]: Spot, colour: string = colours.ink): Mark[] {
  const { width, loop } = turnSign
  const middle = width / 2
  const sag = (t: number): number => 1.1 * Math.sin(Math.PI * t)
  const left = Array.from({ length: 9 }, (_, i): Spot => {
    const t = i / 8
    return [x + middle * t, y - sag(t / 2)]
  })
  const round = Array.from({ length: 25 }, (_, i): Spot => {
    const a = Math.PI / 2 - (i / 24) * 2 * Math.PI
    return [x + middle + loop * Math.cos(a), y - 1.1 - loop + loop * Math.sin(a)]
  })
  const right = Array.from({ length: 9 }, (_, i): Spot => {
    const t = i / 8
    return [x + middle + middle * t, y - sag(0.5 + t / 2)]
  })
  return pathArrow([...left, ...round, ...right], 'full', colour)
}
