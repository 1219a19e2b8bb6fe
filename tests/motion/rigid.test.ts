import fc from 'fast-check'
import { expect, test } from 'vitest'
import {
  between,
  inverse,
  packed,
  type Rigid,
  spotOf,
  turnTo,
  unpacked,
  type Vector,
  within,
} from '../../src/motion/rigid.ts'

const number = fc.double({ min: -300, max: 300, noNaN: true })
const vector = fc.tuple(number, number, number)
const angle = fc.double({ min: -Math.PI, max: Math.PI, noNaN: true })

/** A turn by three angles about fixed axes, as a matrix: nothing of quaternions. */
function axesOf([a, b, c]: readonly number[]): [Vector, Vector, Vector] {
  const spin = ([x, y, z]: Vector): Vector => {
    const [ca, sa, cb, sb, cc, sc] = [a, b, c].flatMap((n = 0) => [Math.cos(n), Math.sin(n)]) as [
      number,
      number,
      number,
      number,
      number,
      number,
    ]
    const [y1, z1] = [y * ca - z * sa, y * sa + z * ca]
    const [x2, z2] = [x * cb + z1 * sb, z1 * cb - x * sb]
    return [x2 * cc - y1 * sc, x2 * sc + y1 * cc, z2]
  }
  return [spin([1, 0, 0]), spin([0, 1, 0]), spin([0, 0, 1])]
}

const placed = fc.tuple(vector, fc.tuple(angle, angle, angle)).map(([at, angles]) => {
  const axes = axesOf(angles)
  return { at, axes, rigid: { at, turn: turnTo(...axes) } satisfies Rigid }
})

const far = (a: Vector, b: Vector): number => Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2])

test('a place from three directions carries points as they do', () => {
  fc.assert(
    fc.property(placed, vector, ({ at, axes: [r, u, n], rigid }, [x, y, z]) => {
      const there = [0, 1, 2].map((i) => (at[i] ?? 0) + (r[i] ?? 0) * x + (u[i] ?? 0) * y + (n[i] ?? 0) * z)
      expect(far(spotOf(rigid, [x, y, z]), there as unknown as Vector)).toBeLessThan(1e-9)
    }),
  )
})

test('one place within another, and back', () => {
  fc.assert(
    fc.property(placed, placed, vector, ({ rigid: a }, { rigid: b }, spot) => {
      expect(far(spotOf(within(a, b), spot), spotOf(a, spotOf(b, spot)))).toBeLessThan(1e-9)
      expect(far(spotOf(inverse(a), spotOf(a, spot)), spot)).toBeLessThan(1e-9)
    }),
  )
})

test('part of the way turns evenly about one axis, and begins and ends where it should', () => {
  fc.assert(
    fc.property(
      placed,
      placed,
      fc.double({ min: 0, max: 1, noNaN: true }),
      vector,
      ({ rigid: a }, { rigid: b }, share, spot) => {
        expect(far(spotOf(between(a, b, 0), spot), spotOf(a, spot))).toBeLessThan(1e-6)
        expect(far(spotOf(between(a, b, 1), spot), spotOf(b, spot))).toBeLessThan(1e-6)
        const turnOf = (p: Rigid, q: Rigid) =>
          2 * Math.acos(Math.min(1, Math.abs(p.turn.reduce((sum, n, i) => sum + n * (q.turn[i] ?? 0), 0))))
        expect(turnOf(a, between(a, b, share))).toBeCloseTo(share * turnOf(a, b), 4)
      },
    ),
  )
})

test('written as seven whole numbers, a place is off by no more than a hair', () => {
  fc.assert(
    fc.property(placed, vector, ({ rigid }, spot) => {
      expect(packed(rigid).every(Number.isInteger)).toBe(true)
      expect(far(spotOf(unpacked(packed(rigid)), spot), spotOf(rigid, spot))).toBeLessThan(0.03)
    }),
  )
})
