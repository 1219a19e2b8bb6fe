import { colours, weights } from './ink.ts'
import { capHeight, label, textWidth } from './label.ts'
import { arrow, line, type Mark } from './mark.ts'
import type { Spot } from './num.ts'

/** One side of a shape with the room beside it, where its dimensions go: u runs along the side, v away from it. */
export interface Edge {
  readonly origin: Spot
  readonly along: Spot
  readonly out: Spot
  /** Dimension texts of this side read upwards. */
  readonly turned: boolean
  /** Whether "above the line", as the text reads, is away from the shape (1) or towards it (-1). */
  readonly above: 1 | -1
}

/** The sides of a shape from (0, 0) to (width, height), y downwards; running along from left to right or upwards. */
export const edges = {
  top: (): Edge => ({ origin: [0, 0], along: [1, 0], out: [0, -1], turned: false, above: 1 }),
  bottom: (height: number): Edge => ({
    origin: [0, height],
    along: [1, 0],
    out: [0, 1],
    turned: false,
    above: -1,
  }),
  left: (height: number): Edge => ({
    origin: [0, height],
    along: [0, -1],
    out: [-1, 0],
    turned: true,
    above: 1,
  }),
  right: (width: number, height: number): Edge => ({
    origin: [width, height],
    along: [0, -1],
    out: [1, 0],
    turned: true,
    above: -1,
  }),
}

/** Between a dimension line and the foot of its text, in mm. */
export const lift = 0.9
/** Between a shape and its extension lines, and how far these go past the dimension line. */
export const [start, past] = [0.8, 0.8]

export const onEdge = ({ origin, along, out }: Edge, u: number, v: number): Spot => [
  origin[0] + along[0] * u + out[0] * v,
  origin[1] + along[1] * u + out[1] * v,
]

/** Distance from one row of dimensions to the next. */
const rowStep = (size: number): number => capHeight * size + lift + 0.9

/** How far from the shape the dimension line of a row is. */
const rowLine = (edge: Edge, row: number, size: number): number =>
  (edge.above < 0 ? 1 + capHeight * size + lift : 2.4) + row * rowStep(size)

export const extension = (edge: Edge, u: number, to: number, from = start): Mark =>
  line(onEdge(edge, u, from), onEdge(edge, u, to + past), { class: 'extension', width: weights.dimension })

export const dimensionLine = (edge: Edge, from: number, to: number, v: number): Mark =>
  line(onEdge(edge, from, v), onEdge(edge, to, v), { class: 'dimension', width: weights.dimension })

export interface Across {
  readonly from: number
  readonly to: number
  readonly text: string
  readonly size: number
  readonly row?: number
  /** Beyond which end the text goes when it is too wide to stand between. */
  readonly beyond?: 'from' | 'to'
  readonly bold?: boolean
  readonly colour?: string
  readonly class?: string
  /** How far inside the shape that which is measured is: its extension lines start there. */
  readonly inside?: readonly [number, number]
}

/** One dimension from one mark to another along an edge, its text above its line. */
export function across(edge: Edge, a: Across): Mark[] {
  const { from, to, size } = a
  const v = rowLine(edge, a.row ?? 0, size)
  const back: Spot = [-edge.along[0], -edge.along[1]]
  const width = textWidth(a.text, size)
  const [room, inside] = [to - from, to - from >= 5]
  const [first, second] = a.inside ?? [0, 0]
  const between = width + 1.5 <= room
  const beyond = a.beyond ?? 'to'
  const tail = inside ? 0 : 3
  const reach = between ? tail : Math.max(tail, width + 1.5)
  const foot = between ? (from + to - width) / 2 : beyond === 'to' ? to + 0.9 : from - 0.9 - width
  const style = {
    class: a.class ?? 'measure',
    size,
    turned: edge.turned,
    ...(a.bold && { bold: true }),
    ...(a.colour && { colour: a.colour }),
  }
  return [
    extension(edge, from, v, start - first),
    extension(edge, to, v, start - second),
    dimensionLine(edge, from - (beyond === 'from' ? reach : tail), to + (beyond === 'to' ? reach : tail), v),
    arrow(onEdge(edge, from, v), inside ? back : edge.along, colours.ink),
    arrow(onEdge(edge, to, v), inside ? edge.along : back, colours.ink),
    label(a.text, onEdge(edge, foot, v + edge.above * lift), style),
  ]
}
