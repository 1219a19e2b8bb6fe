import type { Border, Card } from '../card/card.ts'
import { type Finding, listOf } from '../length/finding.ts'
import { formatLength } from '../length/format.ts'
import { mustCover } from '../length/grid.ts'
import { type Length, minus, plus, shorter, zero } from '../length/length.ts'
import { type BoxEdge, mechanismBox, type Overhang, overhangsOf, sizeOfBox } from './overhangs.ts'
import type { Closed, Placement } from './pose.ts'

/** Both ways across the shut card. */
const ways = [
  { axis: 0, edges: ['left', 'right'], extent: 'width' },
  { axis: 1, edges: ['bottom', 'top'], extent: 'height' },
] as const

type Way = (typeof ways)[number]

const moves: Record<BoxEdge, string> = {
  left: 'to the right',
  right: 'to the left',
  bottom: 'up',
  top: 'down',
}
const borderNames: Record<BoxEdge, string> = { left: 'left', right: 'right', bottom: 'lower', top: 'upper' }

/**
 * Everything stuck on that reaches beyond the shut card: which edge, how far, and the smallest change that cures it.
 * Edges and moves are those of the shut card as it is looked at with the plate that stays put facing you.
 */
export function stickingOut(card: Card, closed: Closed): Finding[] {
  const box = mechanismBox(card.structure, closed)
  const room = box && sizeOfBox(box)
  const told = overhangsOf(card.structure, closed).flatMap((part) =>
    ways.flatMap((way): Finding[] => {
      const over = way.edges.flatMap((edge) => {
        const by = part.beyond[edge]
        return by ? [{ edge, by }] : []
      })
      if (!room || over.length === 0) return []
      const said = over.map(
        ({ edge, by }) => `the ${borderNames[edge]} edge by ${formatLength(by, card.unit)}`,
      )
      return [
        {
          rule: 'sticks-out',
          severity: 'error',
          message: `Shut, ${part.kind === 'pad' ? 'a letter of ' : ''}\`${part.name}\` sticks out of the card beyond ${listOf(said)}`,
          suggestion: cureOf(card, part, over, {
            way,
            room: room[way.extent],
            at: closed.pose.get(part.plate),
          }),
        },
      ]
    }),
  )
  return [...new Map(told.map((finding) => [finding.message, finding])).values()]
}

interface Place {
  readonly way: Way
  /** How wide or high the shut card is. */
  readonly room: Length
  /** Of the plate. */
  readonly at: Placement | undefined
}

function cureOf(
  card: Card,
  part: Overhang,
  over: readonly { edge: BoxEdge; by: Length }[],
  { way, room, at }: Place,
): string {
  const say = (by: Length): string => formatLength(mustCover(by, card.grid), card.unit)
  const layer = card.layers.find(({ plates }) => plates.includes(part.plate))
  if (layer && part.kind === 'layer')
    return `Leave a border of at least ${listOf(
      over.map(({ edge, by }) => {
        const own = ownEdge(edge, at)
        return `${say(plus(layer.border[own], by))} at its ${own} edge`
      }),
    )}`
  const all = over.reduce((sum, { by }) => plus(sum, by), zero)
  const isItsWidth = at !== undefined && Math.abs(at.right[way.axis]) > Math.SQRT1_2
  const smaller = `${say(all)} ${isItsWidth ? 'narrower' : 'shorter'}`
  if (part.kind === 'pad') return `Use letters ${smaller}, or what they are on`
  const [only, ...others] = over
  const extent = way.axis === 0 ? minus(part.box.right, part.box.left) : minus(part.box.top, part.box.bottom)
  const canMove = only !== undefined && others.length === 0 && !shorter(room, extent)
  return `Make it ${smaller}${canMove ? `, or move it ${say(only.by)} ${moves[only.edge]}` : ''}`
}

/** Which edge of a plate, seen with its face towards you, looks towards an edge of the shut card. */
function ownEdge(edge: BoxEdge, at: Placement | undefined): keyof Border {
  const outwards = { left: [-1, 0], right: [1, 0], bottom: [0, -1], top: [0, 1] } as const
  const [x, y] = outwards[edge]
  const [right, up] = [at?.right ?? [1, 0, 0], at?.up ?? [0, 1, 0]]
  const [u, v] = [right[0] * x + right[1] * y, up[0] * x + up[1] * y]
  if (Math.abs(u) > Math.abs(v)) return u > 0 ? 'right' : 'left'
  return v > 0 ? 'top' : 'bottom'
}
