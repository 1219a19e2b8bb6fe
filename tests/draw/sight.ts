import seen from '../data/colour-vision.json' with { type: 'json' }
import { luminance } from './contrast.ts'

/** The least difference in lightness (CIE L*, 0 to 100) that most readers notice. */
export const justNoticeable = seen.justNoticeable.lightness

/** CIE 1976 lightness of a colour, 0 to 100: what is left of it in a grey print. CIE 15, against white of the same light. */
export const lightness = (colour: string): number => {
  const y = luminance(colour)
  return y > (6 / 29) ** 3 ? 116 * Math.cbrt(y) - 16 : y * (29 / 3) ** 3
}

const linear = (c: number): number => (c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4)
const coded = (c: number): number => (c <= 0.0031308 ? 12.92 * c : 1.055 * c ** (1 / 2.4) - 0.055)
const hex = (channels: readonly number[]): string =>
  `#${channels
    .map((c) => Math.round(255 * coded(Math.min(1, Math.max(0, c)))))
    .map((c) => c.toString(16).padStart(2, '0'))
    .join('')}`
const linearOf = (colour: string): number[] =>
  [1, 3, 5].map((i) => linear(Number.parseInt(colour.slice(i, i + 2), 16) / 255))

/** How a colour looks to readers: to most, without one kind of cones, and in grey. */
export const sights: readonly (readonly [name: string, look: (colour: string) => string])[] = [
  ['most readers', (colour) => colour],
  ...Object.entries(seen.matrices).map(([name, rows]): [string, (colour: string) => string] => [
    name,
    (colour) => {
      const own = linearOf(colour)
      return hex(rows.map((row) => row.reduce((sum, share, i) => sum + share * (own[i] ?? 0), 0)))
    },
  ]),
  [
    'a grey print',
    (colour) => {
      const y = luminance(colour)
      return hex([y, y, y])
    },
  ],
]
