/** A closed polygon with corners (u, v), and windows in it, as even-odd rings. */
export type Shape = readonly (readonly (readonly [u: number, v: number])[])[]

/** A stretch of u in which the same plates lie on each other. */
export interface Cell {
  readonly from: number
  readonly to: number
  /** The shapes that cover it, in ascending order. Cells that the same shapes cover have the same list. */
  readonly shapes: readonly number[]
  /** The edges that it begins and ends at. */
  readonly edges: readonly [Edge, Edge]
}

/** The shut card between two values of v, where all shapes begin and end at the same u. */
export interface Slice {
  readonly v: number
  readonly low: number
  readonly high: number
  readonly cells: readonly Cell[]
}

type Edge = readonly [u0: number, v0: number, u1: number, v1: number]

/** Narrower than this, a cell is an error of rounding: only slanted edges have any. In units of the section. */
const sliver = 1e-6

/**
 * Cuts shapes along v wherever one of them has a corner, or slanted edges cross. Within a slice which shapes cover a
 * stretch is the same everywhere, so one line through its middle tells.
 */
export function slicesOf(shapes: readonly Shape[], cuts: readonly number[]): Slice[] {
  const edges = shapes.map(edgesOf)
  const lists = new Map<string, readonly number[]>()
  const listed = (list: readonly number[]): readonly number[] => {
    const key = list.join()
    const known = lists.get(key) ?? list
    lists.set(key, known)
    return known
  }
  const corners = [...edges.flat().flatMap(([, v0, , v1]) => [v0, v1]), ...crossings(edges), ...cuts]
  return pairsOf(distinct(corners, (v) => v)).flatMap(([low, high]) => {
    const v = (low + high) / 2
    const stretches = edges.flatMap((own, shape) =>
      stretchesAt(own, v).map(([from, to]) => ({ shape, from, to })),
    )
    const ends = distinct(
      stretches.flatMap(({ from, to }) => [from, to]),
      ({ u }) => u,
    )
    const cells = pairsOf(ends).flatMap(([start, end]): Cell[] => {
      const [from, to] = [start.u, end.u]
      const over: number[] = []
      for (const s of stretches) if (s.from.u < to - sliver && s.to.u > from + sliver) over.push(s.shape)
      return over.length > 0 ? [{ from, to, shapes: listed(over), edges: [start.edge, end.edge] }] : []
    })
    return cells.length > 0 ? [{ v, low, high, cells }] : []
  })
}

/** The corners of a cell, counter-clockwise: it is a trapezoid, or a triangle, between the two levels of its slice. */
export function outlineOf({ low, high }: Slice, { edges: [left, right] }: Cell): [u: number, v: number][] {
  const level = (v: number): [number, number][] => {
    const [from, to] = [crossingAt(left, v), crossingAt(right, v)]
    return to - from > sliver
      ? [
          [from, v],
          [to, v],
        ]
      : [[from, v]]
  }
  return [...level(low), ...level(high).reverse()]
}

/** Where an edge, or the line that it is a part of, is at this v. */
const crossingAt = ([u0, v0, u1, v1]: Edge, v: number): number =>
  u0 === u1 ? u0 : u0 + ((v - v0) / (v1 - v0)) * (u1 - u0)

const edgesOf = (shape: Shape): Edge[] =>
  shape.flatMap((ring) =>
    ring.flatMap(([u1, v1], i): Edge[] => {
      const [u0, v0] = ring.at(i - 1) ?? [u1, v1]
      return v0 === v1 ? [] : [[u0, v0, u1, v1]]
    }),
  )

/** An edge, and where a slice cuts it. */
interface End {
  readonly u: number
  readonly edge: Edge
}

function stretchesAt(edges: readonly Edge[], v: number): [End, End][] {
  const ends = edges
    .filter(([, v0, , v1]) => v0 > v !== v1 > v)
    .map((edge): End => ({ u: crossingAt(edge, v), edge }))
    .sort((a, b) => a.u - b.u)
  return ends.flatMap((end, i): [End, End][] => (i % 2 === 0 ? [[end, ends[i + 1] ?? end]] : []))
}

/** Where a slanted edge crosses another edge. */
function crossings(edges: readonly (readonly Edge[])[]): number[] {
  const all = edges.flat()
  const slanted = all.filter(([u0, , u1]) => u0 !== u1)
  return slanted.flatMap(([u0, v0, u1, v1]) =>
    all.flatMap(([p0, q0, p1, q1]) => {
      const turn = (u1 - u0) * (q1 - q0) - (v1 - v0) * (p1 - p0)
      // Edges that lie on each other, but for rounding, do not cross.
      if (
        Math.abs(turn) <
        1e-9 * (Math.abs(u1 - u0) + Math.abs(v1 - v0)) * (Math.abs(p1 - p0) + Math.abs(q1 - q0))
      )
        return []
      const s = ((p0 - u0) * (q1 - q0) - (q0 - v0) * (p1 - p0)) / turn
      const t = ((p0 - u0) * (v1 - v0) - (q0 - v0) * (u1 - u0)) / turn
      return s > 0 && s < 1 && t > 0 && t < 1 ? [v0 + s * (v1 - v0)] : []
    }),
  )
}

function distinct<T>(values: readonly T[], at: (value: T) => number): T[] {
  const sorted = [...values].sort((a, b) => at(a) - at(b))
  return sorted.filter((x, i) => i === 0 || at(x) - at(sorted[i - 1] ?? x) > sliver)
}

const pairsOf = <T>(values: readonly T[]): [T, T][] => values.slice(1).map((to, i) => [values[i] ?? to, to])
