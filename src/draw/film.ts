import { line, type Mark } from './mark.ts'
import type { Spot } from './num.ts'
import type { Flat } from './plane.ts'

/**
 * The two glints that tell film from paper, near the upper left corner of a sheet.
 *
 * @param place from the sheet (x to the right, y upwards, of this width and height) to the drawing.
 * @param scale mm of the drawing in a mm of the sheet.
 */
export const glints = (width: number, height: number, scale: number, place: (p: Flat) => Spot): Mark[] =>
  glintLines(width, height, scale).map(([from, to]) => line(place(from), place(to), glintStroke))

export const glintStroke = { class: 'glint', width: 0.25, colour: '#5d7f8f', cap: 'round' } as const

/** Where they are on the sheet. */
export function glintLines(width: number, height: number, scale: number): [Flat, Flat][] {
  const long = Math.min(7 / scale, height * 0.45, width * 0.3)
  const [x, y] = [Math.min(3 / scale, width * 0.1), height - Math.min(2.5 / scale, height * 0.15)]
  const at = (right: number, down: number): Flat => [x + long * right, y - long * down]
  return [
    [at(0, 1), at(1, 0)],
    [at(0.55, 0.95), at(0.95, 0.55)],
  ]
}
