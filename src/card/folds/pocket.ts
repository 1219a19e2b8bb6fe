import { fitInside } from '../../length/grid.ts'
import { inches, type Length, minus, part, plus, shorter, times, zero } from '../../length/length.ts'
import { glued } from '../making/glue.ts'
import { isUsual } from '../making/usual.ts'
import { line, point, rectangle, sheet } from '../strip.ts'
import type { Hinge, Plate } from '../structure.ts'
import type { BuildInput, FoldStyle, Limit } from '../style.ts'

type Key = 'pocket' | 'tag' | 'seam' | 'gap'

/** The inside of the pocket less the play of the tag on both sides; the pocket keeps a gap from the spine, too. */
const tagWidth = ({ closed, lengths: { seam, gap } }: BuildInput<Key>): Length =>
  minus(closed.width, times(seam, 2), times(gap, 3))

function limits(input: BuildInput<Key>): Limit<Key>[] {
  const { closed, lengths, grid, say } = input
  const { pocket, tag, seam, gap } = lengths
  const longest = minus(closed.height, gap)
  const widest = fitInside(part(minus(closed.width, times(gap, 3), grid), 2), grid)
  if (shorter(longest, times(grid, 2)) || shorter(widest, grid))
    return [
      {
        about: 'gap',
        message: `A gap of ${say(gap)} leaves nothing of a tag on a card ${say(closed.width)} wide and ${say(closed.height)} high`,
        suggestion: `Make the gap smaller; ${isUsual(inches(1, 16), 'up', input)}`,
      },
    ]
  const found: Limit<Key>[] = []
  if (!shorter(gap, pocket) || !shorter(pocket, closed.height))
    found.push({
      about: 'pocket',
      message: `A pocket ${say(pocket)} high holds no tag on a card ${say(closed.height)} high`,
      suggestion: `Make it more than ${say(gap)} and less than ${say(closed.height)} high; half of the card is usual`,
    })
  if (!shorter(pocket, tag) || shorter(longest, tag))
    found.push({
      about: 'tag',
      message: `A tag ${say(tag)} long cannot be taken hold of in a pocket ${say(pocket)} high, or sticks out of a card ${say(closed.height)} high`,
      suggestion: `Make it longer than ${say(pocket)} and at most ${say(longest)}`,
    })
  if (!shorter(zero, tagWidth(input)))
    found.push({
      about: 'seam',
      message: `Seams of ${say(seam)} leave no room for a tag on a card ${say(closed.width)} wide`,
      suggestion: `Make the seams at most ${say(widest)}, or the card wider`,
    })
  return found
}

/**
 * A side fold, front W · V · back W, with one more panel below the back: the pocket, which folds up (V) over the lower
 * part of the back and is stuck to it along its two sides. A tag stands in it and is pulled out upwards.
 *
 * The tag is as wide as the pocket's inside, between the seams, less the gap on either side. It stands a gap above the
 * crease, and is free when it has been pulled up by the rest of the pocket's height. The pocket ends a gap before the
 * spine, so that the front can close over it; what is left of the sheet beside and below it is cut away.
 */
export const pocket: FoldStyle<Key> = {
  name: 'pocket',
  summary: 'A side fold with a pocket folded up inside, and a tag that is pulled out of it.',
  parameters: {
    pocket: { help: 'height of the pocket', usual: 'closed.height / 2', round: 'nearest' },
    tag: { help: 'length of the tag', usual: 'closed.height - 1/2 in', round: 'down' },
    seam: { help: 'what is stuck down at either side of the pocket', usual: '1/8 in', round: 'up' },
    gap: { help: 'play of the tag, and of the pocket beside the spine', usual: '1/16 in', round: 'up' },
  },
  panels: { front: 'back', back: 'face', pocket: 'back', tag: 'face' },
  pieces: ['tag'],
  limits,
  build(input) {
    const { closed, lengths, stock } = input
    const { width, height } = closed
    const { gap, seam } = lengths
    const deep = lengths.pocket
    const [start, end] = [plus(width, gap), times(width, 2)]
    const panel = (name: string, x: Length): Plate => ({
      name,
      piece: 'base',
      outline: rectangle(closed, point(x, deep)),
      holes: [],
    })
    const flap: Plate = {
      name: 'pocket',
      piece: 'base',
      outline: rectangle({ width: minus(width, gap), height: deep }, point(start, zero)),
      holes: [],
    }
    const hinges: Hinge[] = [
      { between: ['front', 'back'], line: line(width, deep, width, plus(deep, height)), fold: 'valley' },
      { between: ['back', 'pocket'], line: line(start, deep, end, deep), fold: 'valley' },
    ]
    const tag = sheet('tag', stock, { width: tagWidth(input), height: lengths.tag })
    return {
      pieces: [
        {
          name: 'base',
          kind: 'base',
          stock,
          count: 1,
          size: { width: end, height: plus(height, deep) },
          cuts: [line(zero, deep, start, deep), line(start, deep, start, zero)],
        },
        tag.piece,
      ],
      plates: [panel('front', zero), panel('back', width), flap, tag.plate],
      hinges,
      stops: [],
      display: {
        angles: [{ hinge: ['front', 'back'], degrees: 60 }],
        plate: 'back',
        rests: 'upright',
        turn: -30,
      },
      // The tag lies on the back before the pocket is stuck down over it.
      bonds: [
        glued('tag', 'back', point(plus(start, seam, gap), plus(deep, gap)), {
          slide: point(zero, minus(deep, gap)),
        }),
        glued('pocket', 'back', point(zero, times(deep, 2)), { over: true, turn: 180 }),
      ],
    }
  },
  starter: `fold: pocket
closed: 5 x 7 in
base: {stock: white card, weight: 300 gsm}
layers:
  cover:
    on: front
    border: 1/8 in
    stock: patterned paper
  pocket trim:
    on: pocket
    border: 1/8 in
    stock: patterned paper
  message:
    on: tag
    border: 1/8 in
    stock: writing paper`,
}
