import { turnOf } from '../card/turn.ts'

/** A map of the plane, in whole numbers unless something is stuck on slanting: (x, y) goes to (a·x + b·y + e, c·x + d·y + f). */
export interface Affine {
  readonly a: number
  readonly b: number
  readonly c: number
  readonly d: number
  readonly e: number
  readonly f: number
}

export type Whole = readonly [x: number, y: number]

export const identity: Affine = { a: 1, b: 0, c: 0, d: 1, e: 0, f: 0 }

export const apply = (m: Affine, [x, y]: Whole): Whole => [m.a * x + m.b * y + m.e, m.c * x + m.d * y + m.f]

/** The map without its move: for directions. */
export const applyLinear = (m: Affine, [x, y]: Whole): Whole => [m.a * x + m.b * y, m.c * x + m.d * y]

/** First `inner`, then `outer`. */
export const after = (outer: Affine, inner: Affine): Affine => {
  const [e, f] = apply(outer, [inner.e, inner.f])
  return {
    a: outer.a * inner.a + outer.b * inner.c,
    b: outer.a * inner.b + outer.b * inner.d,
    c: outer.c * inner.a + outer.d * inner.c,
    d: outer.c * inner.b + outer.d * inner.d,
    e,
    f,
  }
}

/** Back again. Only for maps that keep lengths, whose inverse is their transpose. */
export const inverse = ({ a, b, c, d, e, f }: Affine): Affine => ({
  a,
  b: c,
  c: b,
  d,
  e: -(a * e + c * f),
  f: -(b * e + d * f),
})

export const determinant = ({ a, b, c, d }: Affine): number => a * d - b * c

export const sameLinear = (m: Affine, n: Affine): boolean =>
  m.a === n.a && m.b === n.b && m.c === n.c && m.d === n.d

export const sameMap = (m: Affine, n: Affine): boolean => sameLinear(m, n) && m.e === n.e && m.f === n.f

/** Turned over (x becomes -x) or not, then turned counter-clockwise, then moved. In whole numbers for quarter turns. */
export function moveBy(over: boolean, degrees: number, [e, f]: Whole): Affine {
  const [cos, sin] = turnOf(degrees)
  const x = over ? -1 : 1
  return { a: x * cos, b: -sin, c: x * sin, d: cos, e, f }
}
