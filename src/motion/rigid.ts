export type Vector = readonly [x: number, y: number, z: number]

/** A turn about an axis: a unit quaternion. */
export type Turn = readonly [x: number, y: number, z: number, w: number]

/** Where something rigid is: first turned, then moved. In mm. */
export interface Rigid {
  readonly at: Vector
  readonly turn: Turn
}

export const still: Rigid = { at: [0, 0, 0], turn: [0, 0, 0, 1] }

/** One turn after another. */
const times = ([x, y, z, w]: Turn, [a, b, c, d]: Turn): Turn => [
  w * a + x * d + y * c - z * b,
  w * b - x * c + y * d + z * a,
  w * c + x * b - y * a + z * d,
  w * d - x * a - y * b - z * c,
]

export const turned = ([x, y, z, w]: Turn, [a, b, c]: Vector): Vector => {
  // v + 2 q × (q × v + w v)
  const [p, q, r] = [y * c - z * b + w * a, z * a - x * c + w * b, x * b - y * a + w * c]
  return [a + 2 * (y * r - z * q), b + 2 * (z * p - x * r), c + 2 * (x * q - y * p)]
}

/** Where a point of it is. */
export const spotOf = ({ at, turn }: Rigid, spot: Vector): Vector => {
  const [x, y, z] = turned(turn, spot)
  return [at[0] + x, at[1] + y, at[2] + z]
}

/** What is at `inner` in something that is at `outer`. */
export const within = (outer: Rigid, inner: Rigid): Rigid => ({
  at: spotOf(outer, inner.at),
  turn: times(outer.turn, inner.turn),
})

/** The way back. */
export const inverse = ({ at, turn: [x, y, z, w] }: Rigid): Rigid => {
  const back: Turn = [-x, -y, -z, w]
  const [a, b, c] = turned(back, at)
  return { at: [-a, -b, -c], turn: back }
}

/** Part of the way from one to the other: straight, and about one axis, the shorter way round. */
export function between(a: Rigid, b: Rigid, share: number): Rigid {
  const mix = (p: number, q: number): number => p + (q - p) * share
  return {
    at: [mix(a.at[0], b.at[0]), mix(a.at[1], b.at[1]), mix(a.at[2], b.at[2])],
    turn: slerp(a.turn, b.turn, share),
  }
}

function slerp(a: Turn, b: Turn, share: number): Turn {
  const cosine = a[0] * b[0] + a[1] * b[1] + a[2] * b[2] + a[3] * b[3]
  const angle = Math.acos(Math.min(1, Math.abs(cosine)))
  const sine = Math.sin(angle)
  const [p, q] =
    sine < 1e-6 ? [1 - share, share] : [Math.sin((1 - share) * angle) / sine, Math.sin(share * angle) / sine]
  const other = cosine < 0 ? -q : q
  return unit([
    a[0] * p + b[0] * other,
    a[1] * p + b[1] * other,
    a[2] * p + b[2] * other,
    a[3] * p + b[3] * other,
  ])
}

function unit([x, y, z, w]: Turn): Turn {
  const length = Math.hypot(x, y, z, w)
  return [x / length, y / length, z / length, w / length]
}

/** The turn that takes x, y and z to three directions at right angles. */
export function turnTo(right: Vector, up: Vector, normal: Vector): Turn {
  // From the greatest of the four numbers, so that none is divided by next to nothing.
  const [[a, d, g], [b, e, h], [c, f, i]] = [right, up, normal]
  const squares = [1 + a - e - i, 1 - a + e - i, 1 - a - e + i, 1 + a + e + i]
  const most = squares.indexOf(Math.max(...squares))
  const four: readonly Turn[] = [
    [squares[0] ?? 0, b + d, c + g, h - f],
    [b + d, squares[1] ?? 0, f + h, c - g],
    [c + g, f + h, squares[2] ?? 0, d - b],
    [h - f, c - g, d - b, squares[3] ?? 0],
  ]
  return unit(four[most] ?? [0, 0, 0, 1])
}

const [places, turns] = [100, 100_000]

/** Seven whole numbers: place in 1/100 mm, turn in 1/100000. */
export const packed = ({ at, turn }: Rigid): number[] => [
  ...at.map((n) => Math.round(n * places)),
  ...turn.map((n) => Math.round(n * turns)),
]

export function unpacked(seven: readonly number[]): Rigid {
  const [x = 0, y = 0, z = 0, a = 0, b = 0, c = 0, d = 0] = seven
  return { at: [x / places, y / places, z / places], turn: unit([a, b, c, d]) }
}
