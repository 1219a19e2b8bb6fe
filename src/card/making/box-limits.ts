import { listOf } from '../../length/finding.ts'
import { type Length, larger, minus, plus, type Size, shorter, smaller, zero } from '../../length/length.ts'
import type { BuildInput, Limit } from '../style.ts'
import type { Box } from './boxes.ts'
import { closedBySpine } from './on-top.ts'

/** How high above the spine a box begins: as high as the boxes are that it stands on. */
export function heightUnder(box: Box, boxes: readonly Box[]): Length {
  const below = boxes.find(({ name }) => name === box.on)
  return below ? plus(heightUnder(below, boxes), below.height) : zero
}

/** What is needed to judge a box: all of them, and a panel of the card with its spine upright. */
interface Room extends Pick<BuildInput, 'grid' | 'say'> {
  readonly boxes: readonly Box[]
  readonly panel: Size
}

/** What boxes cannot be cut from a sheet of two panels, and what would cure them. */
export function boxLimits(boxes: readonly Box[], input: BuildInput): Limit[] {
  const room = { boxes, panel: closedBySpine(input), grid: input.grid, say: input.say }
  const empty = boxes.flatMap((box) => emptyLimits(box, room))
  if (empty.length > 0) return empty
  return [
    ...boxes.flatMap((box) => [...reachLimits(box, room), ...floorLimits(box, room)]),
    ...boxes.flatMap((box, i) => overlapLimits(box, boxes.slice(0, i), room)),
    ...creaseLimits(room),
  ]
}

const emptyLimits = (box: Box, { say }: Room): Limit[] =>
  (['height', 'depth', 'width'] as const)
    .filter((key) => !shorter(zero, box[key]))
    .map((key) => ({
      about: box.blame(key),
      message: `The ${key} of \`${box.name}\` is ${say(box[key])}`,
      suggestion: `Give it a ${key} above zero, or leave the ${key} out`,
    }))

/** Shut, the edge of a box lies as far from the spine as the box is high and deep, and what it stands on is high. */
function reachLimits(box: Box, { boxes, panel, say }: Room): Limit[] {
  const left = minus(panel.width, heightUnder(box, boxes))
  const out = minus(plus(box.height, box.depth), left)
  if (!shorter(zero, out)) return []
  const one = (['height', 'depth'] as const)
    .map((key) => [key, minus(box[key], out)] as const)
    .filter(([, length]) => shorter(zero, length))
    .map(([key, length]) => `the ${key} at most ${say(length)}`)
  const both = `its height and depth together at most ${say(left)}`
  return [
    {
      about: box.blame('height'),
      message: `\`${box.name}\` sticks out of the shut card by ${say(out)}`,
      suggestion: shorter(zero, left)
        ? `Make ${one.length > 0 ? one.join(', or ') : both}`
        : `Make \`${box.on}\` lower`,
    },
  ]
}

/** A box stands on the card between its edges, or on the top of another box, within its edges and behind its front. */
function floorLimits(box: Box, { boxes, panel, grid, say }: Room): Limit[] {
  const below = boxes.find(({ name }) => name === box.on)
  const [from, to] = below ? [below.at, plus(below.at, below.width)] : [zero, panel.height]
  const place = below ? `\`${below.name}\`` : 'the card'
  const limits: Limit[] = []
  if (below && !shorter(box.depth, below.depth))
    limits.push({
      about: box.blame('depth'),
      message: `\`${box.name}\` is ${say(box.depth)} deep, and ${place}, which it stands on, is ${say(below.depth)}`,
      suggestion: `Make the depth at most ${say(minus(below.depth, grid))}`,
    })
  if (!shorter(box.width, minus(to, from)))
    limits.push({
      about: box.blame('width'),
      message: `\`${box.name}\` is ${say(box.width)} wide, so nothing is left of the crease that it stands in: ${place} is ${say(minus(to, from))}`,
      suggestion: `Make the width at most ${say(minus(to, from, grid))}`,
    })
  else if (shorter(box.at, from) || shorter(to, plus(box.at, box.width)))
    limits.push({
      about: box.blame('at'),
      message: `\`${box.name}\` begins at ${say(box.at)} and is ${say(box.width)} wide, so it sticks out beyond ${place}`,
      suggestion: `Begin it between ${say(from)} and ${say(minus(to, box.width))}`,
    })
  return limits
}

/** Two boxes in one crease. */
const overlapLimits = (box: Box, before: readonly Box[], { say }: Room): Limit[] =>
  before
    .filter(({ on }) => on === box.on)
    .flatMap((other) => {
      const [end, otherEnd] = [plus(box.at, box.width), plus(other.at, other.width)]
      if (!shorter(box.at, otherEnd) || !shorter(other.at, end)) return []
      const by = minus(smaller(end, otherEnd), larger(box.at, other.at))
      return [
        {
          about: box.blame('at'),
          message: `\`${box.name}\` and \`${other.name}\` overlap along the spine by ${say(by)}`,
          suggestion: `Begin \`${box.name}\` at ${say(otherEnd)}, where \`${other.name}\` ends, or make one of them narrower`,
        },
      ]
    })

/** Several boxes that leave nothing of a crease between them: its two sides would hang together nowhere. */
function creaseLimits({ boxes, panel, grid, say }: Room): Limit[] {
  const creases = [...new Set(boxes.map(({ on }) => on))]
  return creases.flatMap((on) => {
    const own = boxes.filter((box) => box.on === on)
    const [last, length] = [own.at(-1), boxes.find(({ name }) => name === on)?.width ?? panel.height]
    if (!last || own.length === 1 || !plus(...own.map(({ width }) => width)).equals(length)) return []
    return [
      {
        about: last.blame('width'),
        message: `${listOf(own.map(({ name }) => `\`${name}\``))} leave nothing of the crease that they stand in`,
        suggestion: `Make \`${last.name}\` at most ${say(minus(last.width, grid))} wide`,
      },
    ]
  })
}
