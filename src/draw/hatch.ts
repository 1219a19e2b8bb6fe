import type { Element } from 'hast'
import { s } from 'hastscript'
import { boxAround } from './box.ts'
import type { Mark } from './mark.ts'
import { num, type Spot } from './num.ts'

/** Marks that repeat over a sheet: what one square of it holds. */
export interface Hatch {
  /** Side of the square, in mm. */
  readonly tile: number
  /** Degrees by which the squares are turned, clockwise. */
  readonly turn: number
  readonly colour: string
  /** Of the lines, or across a dot, in mm. */
  readonly width: number
  /** Lines across the whole square, from its upper edge or, if they are upright, from its left edge. */
  readonly lines?: readonly { readonly level: boolean; readonly at: number }[]
  /** Dots, from its upper left corner. */
  readonly dots?: readonly Spot[]
}

/** `x' = a·x + c·y`, `y' = b·x + d·y`: how a face lies in the drawing. Nothing is moved by it. */
export type Slant = readonly [a: number, b: number, c: number, d: number]

type Loop = readonly Spot[]

/**
 * The marks of a hatch where they fall on a shape, drawn one by one: Chromium prints a shape that is filled with an SVG
 * pattern as a picture of the whole page with a few dots to the millimetre. Lines stay lines.
 *
 * @param loops closed; what lies inside two of them, a window, is free of marks.
 * @param slant of the face that the hatch lies on.
 */
export const hatching = (loops: readonly Loop[], hatch: Hatch, slant: Slant = [1, 0, 0, 1]): Mark => ({
  node: () => hatchNode(loops, hatch, times(slant, turned(hatch.turn))),
  box: boxAround(loops.flat()),
})

function hatchNode(loops: readonly Loop[], hatch: Hatch, matrix: Slant): Element {
  const back = inverse(matrix)
  const own = loops.map((loop) => loop.map((spot) => apply(back, spot)))
  const d = [...linesIn(own, hatch), ...dotsIn(own, hatch)].join('')
  const transform = `matrix(${matrix.map((n) => num(n, 4)).join(' ')} 0 0)`
  return s(
    'g',
    { class: 'hatch', ...(transform !== 'matrix(1 0 0 1 0 0)' && { transform }) },
    d === ''
      ? []
      : s('path', {
          d,
          stroke: hatch.colour,
          'stroke-width': num(hatch.width),
          ...(hatch.dots && { 'stroke-linecap': 'round' }),
        }),
  )
}

const two = (value: number): string => num(value, 2)

/** An upright line is a level one of the shape with its axes swapped. */
const swapped = (loops: readonly Loop[]): Loop[] => loops.map((loop) => loop.map(([x, y]): Spot => [y, x]))

const linesIn = (own: readonly Loop[], { tile, lines = [] }: Hatch): string[] =>
  lines.flatMap(({ level, at }) => {
    const seen = level ? own : swapped(own)
    return rows(seen, tile, at).flatMap((row) =>
      crossings(seen, row).map(([from, to]) =>
        level ? `M${two(from)} ${two(row)}H${two(to)}` : `M${two(row)} ${two(from)}V${two(to)}`,
      ),
    )
  })

const dotsIn = (own: readonly Loop[], { tile, width, dots = [] }: Hatch): string[] =>
  dots.flatMap(([x0, y0]) => {
    const columns = rows(swapped(own), tile, x0)
    return rows(own, tile, y0).flatMap((y) =>
      holding(own, columns, y, width / 2).map((x) => `M${two(x)} ${two(y)}h0`),
    )
  })

/** Levels `at`, `at + tile` … between the lowest and the highest spot. */
function rows(loops: readonly Loop[], tile: number, at: number): number[] {
  const ys = loops.flat().map(([, y]) => y)
  const first = Math.ceil((Math.min(...ys) - at) / tile)
  const last = Math.floor((Math.max(...ys) - at) / tile)
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => at + (first + i) * tile)
}

/** The stretches of a level line that lie in a shape. */
function crossings(loops: readonly Loop[], level: number): [from: number, to: number][] {
  const xs = loops.flatMap((loop) =>
    loop.flatMap(([x1, y1], i) => {
      const [x2, y2] = loop[(i + 1) % loop.length] ?? [x1, y1]
      return y1 <= level !== y2 <= level ? [x1 + ((level - y1) / (y2 - y1)) * (x2 - x1)] : []
    }),
  )
  xs.sort((a, b) => a - b)
  return xs.flatMap((x, i): [number, number][] => (i % 2 === 0 ? [[x, xs[i + 1] ?? x]] : []))
}

/** Those of the places along a level line at which a round dot lies in a shape as a whole. */
function holding(loops: readonly Loop[], places: readonly number[], level: number, radius: number): number[] {
  const [middle, above, below] = [0, radius, -radius].map((dy) => crossings(loops, level + dy))
  const within = (stretches: readonly [number, number][] | undefined, x: number): boolean =>
    stretches?.some(([from, to]) => x >= from && x <= to) ?? false
  return places.filter(
    (x) =>
      [x, x + radius, x - radius].every((end) => within(middle, end)) && within(above, x) && within(below, x),
  )
}

const apply = ([a, b, c, d]: Slant, [x, y]: Spot): Spot => [a * x + c * y, b * x + d * y]
const times = (m: Slant, n: Slant): Slant => [...apply(m, [n[0], n[1]]), ...apply(m, [n[2], n[3]])]
const turned = (degrees: number): Slant => {
  const [cos, sin] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)]
  return [cos, sin, -sin, cos]
}
const inverse = ([a, b, c, d]: Slant): Slant => {
  const size = a * d - b * c
  return [d / size, -b / size, -c / size, a / size]
}
