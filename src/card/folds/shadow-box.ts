import { fitInside, mustCover } from '../../length/grid.ts'
import {
  inches,
  type Length,
  minus,
  part,
  plus,
  type Size,
  shorter,
  smaller,
  times,
} from '../../length/length.ts'
import { frameSheet } from '../making/frame-box.ts'
import { sheet } from '../strip.ts'
import type { Bend } from '../structure.ts'
import type { BuildInput, Built, FoldStyle, Limit } from '../style.ts'

type Key = 'depth' | 'rim' | 'tab'
type Input = BuildInput<Key, never, 'hinged'>

/** A rim narrower than this tears. Common practice, no source. */
const leastRim = inches(1, 8)

const isHinged = ({ choices }: Input): boolean => choices.hinged === 'yes'

/** A hinged box swings to the side by its depth when it is laid flat, and is so much narrower. */
const frameOf = (input: Input): Size => {
  const { width, height } = input.closed
  return { width: isHinged(input) ? minus(width, input.lengths.depth) : width, height }
}

/**
 * A frame W × H with a window, walls of the depth d behind it all round, and returns stuck inside on a back W × H. It is a
 * box: it does not fold flat, and its closed size is that of its front.
 *
 * Hinged, it has no upper and lower wall: frame, walls and back, W - d wide, are a parallelogram that stands square and
 * lies flat. Then the frame has swung to the side by d, so the whole is W wide.
 */
export const shadowBox: FoldStyle<Key, never, 'hinged'> = {
  name: 'shadow box',
  summary: 'A frame with a window in front of a back, the walls between them holding them apart.',
  parameters: {
    depth: { help: 'how far the frame stands before the back', usual: '3/4 in', round: 'nearest' },
    rim: { help: 'width of the frame round its window', usual: '3/4 in', round: 'nearest' },
    tab: { help: 'width of the returns that are stuck on the back', usual: '1/2 in', round: 'nearest' },
  },
  choices: {
    hinged: {
      help: 'whether it lies flat: then it has walls at the left and right only, which swing to the side',
      words: ['no', 'yes'],
    },
  },
  panels: { frame: 'back', back: 'face', 'left wall': 'back', 'right wall': 'back' },
  pieces: ['back'],
  limits,
  build,
  starter: `fold: shadow box
closed: 5 x 7 in
base: {stock: white card, weight: 300 gsm}
layers:
  scene:
    on: back
    border: tab + 1/16 in
    stock: patterned paper
  frame mat:
    on: frame
    border: 1/8 in
    stock: blue paper
apertures:
  mat window: {on: frame mat, size: closed.width - rim * 2 x closed.height - rim * 2}`,
}

function limits(input: Input): Limit<Key>[] {
  const { closed, lengths, grid, say } = input
  const { depth, rim, tab } = lengths
  const limit = (about: Key, message: string, suggestion: string): Limit<Key>[] => [
    { about, message, suggestion },
  ]
  const most = (about: Key, x: Length): string => `Make the ${about} at most ${say(x)}`
  const none = (['depth', 'tab'] as const).find((key) => shorter(lengths[key], grid))
  if (none) return limit(none, `A shadow box needs a ${none}`, `Make the ${none} at least ${say(grid)}`)
  const thinnest = mustCover(leastRim, grid)
  if (shorter(rim, thinnest))
    return limit('rim', `A rim of ${say(rim)} will tear`, `Make the rim at least ${say(thinnest)}`)
  const { width, height } = frameOf(input)
  // A hinged box can be made shallower until its frame is nearly as wide as it is.
  const widest = isHinged(input) ? minus(closed.width, grid) : width
  for (const [key, name, message] of [
    ['rim', 'window', `A rim of ${say(rim)} leaves no window`],
    ['tab', 'returns', `Returns of ${say(tab)} do not fit side by side on the back`],
  ] as const) {
    const needed = plus(times(lengths[key], 2), grid)
    const room = smaller(widest, height)
    if (shorter(room, needed))
      return limit(key, message, most(key, fitInside(part(minus(room, grid), 2), grid)))
    if (shorter(width, needed))
      return limit(
        'depth',
        `A hinged box ${say(depth)} deep leaves a frame ${say(width)} wide, too narrow for its ${name}`,
        most('depth', minus(closed.width, needed)),
      )
  }
  return []
}

function build(input: Input): Built {
  const { lengths, stock } = input
  const hinged = isHinged(input)
  const frame = frameOf(input)
  const base = frameSheet({ frame, ...lengths, walls: hinged ? 'two' : 'four' })
  const back = sheet('back', stock, frame)
  const square = base.hinges.map(({ between }): Bend => ({ hinge: between, degrees: 90 }))
  return {
    pieces: [{ name: 'base', kind: 'base', stock, count: 1, size: base.size, cuts: base.cuts }, back.piece],
    plates: [...base.plates, back.plate],
    hinges: base.hinges,
    bonds: base.bonds,
    stops: [],
    // Flat, the left wall lies beside the frame, and the right one beside the back.
    shut: hinged
      ? [
          { hinge: ['frame', 'left wall'], degrees: 0 },
          { hinge: ['right wall', 'right return'], degrees: 0 },
        ]
      : square,
    display: {
      angles: hinged ? [{ hinge: ['frame', 'left wall'], degrees: 90 }] : [],
      plate: 'back',
      rests: 'upright',
      turn: 0,
    },
  }
}
