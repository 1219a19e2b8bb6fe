import { fitInside } from '../../length/grid.ts'
import {
  type Length,
  larger,
  minus,
  negative,
  part,
  plus,
  shorter,
  smaller,
  times,
  zero,
} from '../../length/length.ts'
import { glued } from '../making/glue.ts'
import { type Tray, trayParts } from '../making/tray.ts'
import { point, strip } from '../strip.ts'
import type { BuildInput, FoldStyle, Limit } from '../style.ts'

type Key = 'depth' | 'gap' | 'tab'
type Input = BuildInput<Key, never, 'opens'>

/** A sleeve that slides over a tray is larger by twice the sheet's caliper and the gap. */
function trayOf({ closed: { width, height }, lengths: { depth, gap }, choices, stock, grid }: Input): Tray {
  const inside = (x: Length): Length => fitInside(minus(x, times(stock.caliper, 2), gap), grid)
  const floor = choices.opens === 'top' ? { width: inside(width), height } : { width, height: inside(height) }
  return { floor, wall: inside(depth) }
}

function limits(input: Input): Limit<Key>[] {
  const { closed, lengths, grid, say } = input
  const { depth, gap, tab } = lengths
  const { floor, wall } = trayOf(input)
  const play = minus(depth, wall)
  const least = smaller(floor.width, floor.height)
  const found: Limit<Key>[] = []
  if (!shorter(zero, tab) || !shorter(tab, wall))
    found.push({
      about: shorter(zero, tab) ? 'depth' : 'tab',
      message: `A box ${say(depth)} deep has tray walls ${say(larger(wall, zero))} high, which do not hold glue tabs of ${say(tab)}`,
      suggestion: `Make the box at least ${say(plus(tab, play, grid))} deep, or give the tabs a length below its walls`,
    })
  if (!shorter(times(tab, 2), least))
    found.push({
      about: 'closed',
      message: `A tray ${say(floor.width)} × ${say(floor.height)} is too small for two glue tabs of ${say(tab)} at an end`,
      suggestion: shorter(least, times(grid, 3))
        ? `Make the box larger than ${say(plus(times(tab, 2), gap))} each way`
        : `Make the tabs at most ${say(fitInside(part(minus(least, grid), 2), grid))}, or the box larger than ${say(plus(times(tab, 2), gap))} each way`,
    })
  if (shorter(smaller(closed.width, closed.height), tab))
    found.push({
      about: 'tab',
      message: `A glue tab of ${say(tab)} is longer than the sleeve that it is stuck in`,
      suggestion: `Make it at most ${say(smaller(closed.width, closed.height))}`,
    })
  return found
}

/**
 * A sleeve and a tray that slides in it.
 *
 * The sleeve goes round the tray: front · V · left side D · V · back · V · right side D · V · tab, stuck inside the front.
 * It is open at the top and the bottom (panels W wide, cut H high), or at the left and right (panels H high, cut W wide).
 * The closed size is the outside of the sleeve: W × H, and D deep.
 *
 * The tray is as long as the sleeve, and smaller than it across and in depth by twice the caliper and the gap. It is a
 * cross: a floor and four walls, with a tab at both ends of the two side walls, and the corners cut away.
 */
export const matchBox: FoldStyle<Key, never, 'opens'> = {
  name: 'match box',
  summary: 'A tray that slides in a sleeve. Its closed size is the outside of the sleeve, without the depth.',
  parameters: {
    depth: { help: 'depth of the sleeve', usual: '1 in', round: 'nearest' },
    gap: { help: 'play of the tray, besides two thicknesses of the card', usual: '1/16 in', round: 'up' },
    tab: { help: 'width of the glue tabs', usual: '1/2 in', round: 'nearest' },
  },
  choices: { opens: { help: 'where the tray slides out', words: ['top', 'side'] } },
  panels: { front: 'back', back: 'back', 'left side': 'back', 'right side': 'back', floor: 'face' },
  pieces: ['tray'],
  limits,
  build(input) {
    const { closed, lengths, choices, stock } = input
    const { depth, tab } = lengths
    const upwards = choices.opens === 'top'
    const [round, across] = upwards ? [closed.width, closed.height] : [closed.height, closed.width]
    const sleeve = strip({
      stock,
      panels: [
        { name: 'front', length: round },
        { name: 'left side', length: depth },
        { name: 'back', length: round },
        { name: 'right side', length: depth },
        { name: 'tab', length: tab },
      ],
      folds: ['valley', 'valley', 'valley', 'valley'],
      across,
      along: upwards ? 'width' : 'height',
    })
    const made = trayOf(input)
    const tray = trayParts(made, tab, stock)
    const along = (x: Length) => (upwards ? point(x, zero) : point(zero, x))
    const free = part(minus(round, upwards ? made.floor.width : made.floor.height), 2)
    // The floor begins a wall's height inside its sheet.
    const [start, back] = [negative(made.wall), minus(plus(round, depth, free), made.wall)]
    const hinges = [...sleeve.hinges, ...tray.hinges]
    const square = hinges.map(({ between }) => ({ hinge: between, degrees: 90 }))
    return {
      pieces: [...sleeve.pieces, tray.piece],
      plates: [...sleeve.plates, ...tray.plates],
      hinges,
      bonds: [
        ...tray.bonds,
        glued('floor', 'back', upwards ? point(back, start) : point(start, back), {
          slide: upwards ? point(zero, across) : point(across, zero),
        }),
        glued('tab', 'front', along(negative(times(plus(round, depth), 2)))),
      ],
      stops: [],
      shut: square,
      display: { angles: square.slice(0, 1), plate: 'back', rests: 'flat', turn: 0 },
    }
  },
  starter: `fold: match box
closed: 3 x 5 in
depth: 1 in
base: {stock: white card, weight: 300 gsm}
layers:
  cover:
    on: front
    border: 1/8 in
    stock: patterned paper
  lining:
    on: floor
    border: 1/16 in
    stock: patterned paper`,
}
