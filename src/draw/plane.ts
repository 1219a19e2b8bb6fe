import type { Point, Polygon, Segment } from '../card/structure.ts'
import type { Length } from '../length/length.ts'
import type { Spot } from './num.ts'

/** A point of a flat piece in mm: x to the right, y upwards. */
export type Flat = readonly [x: number, y: number]

/** A length as a plain number of millimetres, for drawing only. */
export const toMm = (length: Length): number => length.valueOf()

export const flatOf = ({ x, y }: Point): Flat => [toMm(x), toMm(y)]
export const flatLoop = (polygon: Polygon): Flat[] => polygon.map(flatOf)
export const flatLine = ({ from, to }: Segment): [Flat, Flat] => [flatOf(from), flatOf(to)]

/** The map from a piece of this height to a drawing with its upper left corner at (0, 0). */
export const ontoPaper =
  (height: number, scale: number) =>
  ([x, y]: Flat): Spot => [x * scale, (height - y) * scale]

/** A straight line of a piece where it falls on the paper. */
export const lineOnPaper = ({ from, to }: Segment, place: (p: Flat) => Spot): [Spot, Spot] => [
  place(flatOf(from)),
  place(flatOf(to)),
]

const nearby = (a: Flat, b: Flat): boolean => Math.hypot(a[0] - b[0], a[1] - b[1]) < 1e-6

/**
 * The outer edge of plates that lie side by side: their edges less what two of them share, joined into loops.
 *
 * @param loops counter-clockwise outlines of the plates, in mm.
 */
export const joinedOutline = (loops: readonly (readonly Flat[])[]): Flat[][] => chain(openEdges(loops).flat())

/** For each loop, the edges and parts of edges that no other loop shares. */
export function openEdges(loops: readonly (readonly Flat[])[]): Edge[][] {
  const edges = loops.map((loop) => loop.map((from, i): Edge => [from, loop[(i + 1) % loop.length] ?? from]))
  return edges.map((own, i) => {
    const others = edges.filter((_, j) => j !== i).flat()
    return own.flatMap((edge) =>
      others.reduce<Edge[]>((left, other) => left.flatMap((part) => without(part, other)), [edge]),
    )
  })
}

/** Whether a line lies all along one edge of these loops. */
export const isOnLoops = (line: readonly [Flat, Flat], loops: readonly (readonly Flat[])[]): boolean =>
  loops.some((loop) =>
    loop.some((from, i) => without(line, [from, loop[(i + 1) % loop.length] ?? from]).length === 0),
  )

type Edge = readonly [Flat, Flat]

/** What is left of an edge when another runs along part of it. */
function without(edge: Edge, other: Edge): Edge[] {
  const [[x1, y1], [x2, y2]] = edge
  const length = Math.hypot(x2 - x1, y2 - y1)
  const [ux, uy] = [(x2 - x1) / length, (y2 - y1) / length]
  const along = ([x, y]: Flat) => (x - x1) * ux + (y - y1) * uy
  const aside = ([x, y]: Flat) => Math.abs((x - x1) * uy - (y - y1) * ux)
  if (aside(other[0]) > 1e-6 || aside(other[1]) > 1e-6) return [edge]
  const [from, to] = [along(other[0]), along(other[1])].sort((a, b) => a - b) as [number, number]
  if (to < 1e-6 || from > length - 1e-6) return [edge]
  const at = (t: number): Flat => [x1 + ux * t, y1 + uy * t]
  return [
    ...(from > 1e-6 ? [[edge[0], at(from)] as const] : []),
    ...(to < length - 1e-6 ? [[at(to), edge[1]] as const] : []),
  ]
}

function chain(edges: readonly Edge[]): Flat[][] {
  const rest = [...edges]
  const loops: Flat[][] = []
  for (let edge = rest.shift(); edge; edge = rest.shift()) {
    const loop: Flat[] = [edge[0], edge[1]]
    for (;;) {
      const next = rest.findIndex(([from]) => nearby(from, loop.at(-1) as Flat))
      if (next < 0) break
      loop.push((rest.splice(next, 1)[0] as Edge)[1])
    }
    if (nearby(loop[0] as Flat, loop.at(-1) as Flat)) loop.pop()
    loops.push(corners(loop))
  }
  return loops
}

/** Without the points in the middle of a straight edge. */
const corners = (loop: readonly Flat[]): Flat[] =>
  loop.filter((p, i) => {
    const [a, b] = [loop.at(i - 1) as Flat, loop[(i + 1) % loop.length] as Flat]
    return Math.abs((p[0] - a[0]) * (b[1] - a[1]) - (p[1] - a[1]) * (b[0] - a[0])) > 1e-6
  })
