/** `x' = a·x + c·y`, `y' = b·x + d·y`: patterns are turned and slanted, never moved. */
export type Matrix = readonly [a: number, b: number, c: number, d: number]
/** A spot of a drawing, in its own units. */
export type Spot = readonly [x: number, y: number]
/** A closed polygon. */
export type Loop = readonly Spot[]

/** `M0 0L10 0L10 5ZM…Z`; undefined for anything else. */
export function readLoops(d: string): Loop[] | undefined {
  if (!/^(M[-\d. L]+Z)+$/.test(d)) return undefined
  return d
    .split('Z')
    .filter((part) => part !== '')
    .map((part) =>
      part
        .slice(1)
        .split('L')
        .map((spot): Spot => {
          const [x = Number.NaN, y = Number.NaN] = spot.split(' ').map(Number)
          return [x, y]
        }),
    )
}

/** Levels `at`, `at + tile` … between the lowest and the highest spot. */
export function rows(loops: readonly Loop[], tile: number, at: number): number[] {
  const ys = loops.flat().map(([, y]) => y)
  const first = Math.ceil((Math.min(...ys) - at) / tile)
  const last = Math.floor((Math.max(...ys) - at) / tile)
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => at + (first + i) * tile)
}

/** The stretches of a level line that lie in a shape. What lies inside two loops, a window, is out of it. */
export function crossings(loops: readonly Loop[], level: number): [from: number, to: number][] {
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
export function holding(
  loops: readonly Loop[],
  places: readonly number[],
  level: number,
  radius: number,
): number[] {
  const [middle, above, below] = [0, radius, -radius].map((dy) => crossings(loops, level + dy))
  const within = (stretches: readonly [number, number][] | undefined, x: number): boolean =>
    stretches?.some(([from, to]) => x >= from && x <= to) ?? false
  return places.filter(
    (x) =>
      [x, x + radius, x - radius].every((end) => within(middle, end)) && within(above, x) && within(below, x),
  )
}

/** A spot carried by a matrix. */
export const apply = ([a, b, c, d]: Matrix, [x, y]: Spot): Spot => [a * x + c * y, b * x + d * y]
export const inverse = ([a, b, c, d]: Matrix): Matrix => {
  const size = a * d - b * c
  return [d / size, -b / size, -c / size, a / size]
}
/** The linear part of a list of `matrix(…)` and `rotate(…)`; undefined for anything else. */
export function readMatrix(text: string): Matrix | undefined {
  let product: Matrix = [1, 0, 0, 1]
  const rest = text.replace(/(matrix|rotate)\(([^)]*)\)/g, (_, name: string, list: string) => {
    const [a = 0, b = 0, c = 0, d = 0] = list
      .trim()
      .split(/[\s,]+/)
      .map(Number)
    const turn = (a * Math.PI) / 180
    const next: Matrix =
      name === 'matrix' ? [a, b, c, d] : [Math.cos(turn), Math.sin(turn), -Math.sin(turn), Math.cos(turn)]
    product = [
      product[0] * next[0] + product[2] * next[1],
      product[1] * next[0] + product[3] * next[1],
      product[0] * next[2] + product[2] * next[3],
      product[1] * next[2] + product[3] * next[3],
    ]
    return ''
  })
  return rest.trim() === '' ? product : undefined
}
