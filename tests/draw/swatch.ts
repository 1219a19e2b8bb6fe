import type { Hatch } from '../../src/draw/hatch.ts'

/** Dots to the millimetre of a swatch, and its sides: a small one is laid on every spot of a large one. */
const [dots, small, large] = [5, 9, 15] as const

/** A square of paper with a hatch, in black and white, row by row: 1 where there is ink. */
function swatch({ tile, turn, width, lines = [], dots: spots = [] }: Hatch, side: number): Float64Array {
  const count = side * dots
  const [cos, sin] = [Math.cos((turn * Math.PI) / 180), Math.sin((turn * Math.PI) / 180)]
  const off = (value: number, at: number): number => {
    const rest = (((value - at) % tile) + tile) % tile
    return Math.min(rest, tile - rest)
  }
  return Float64Array.from({ length: count * count }, (_, i) => {
    const [px, py] = [(i % count) / dots + 0.07, Math.floor(i / count) / dots + 0.07]
    const [x, y] = [px * cos + py * sin, py * cos - px * sin]
    const onLine = lines.some(({ level, at }) => off(level ? y : x, at) <= width / 2)
    return onLine || spots.some(([u, v]) => Math.hypot(off(x, u), off(y, v)) <= width / 2) ? 1 : 0
  })
}

/**
 * How alike two hatches are when one is laid over the other as well as it can be: the greatest correlation of their ink
 * over all shifts, 1 for the same hatch, 0 for what has nothing in common.
 */
export function likeness(a: Hatch, b: Hatch): number {
  const [own, other] = [swatch(a, small), swatch(b, large)]
  const [n, m] = [small * dots, large * dots]
  const mean = own.reduce((sum, v) => sum + v, 0) / own.length
  const spread = Math.sqrt(own.reduce((sum, v) => sum + (v - mean) ** 2, 0))
  let most = 0
  for (let dy = 0; dy <= m - n; dy++)
    for (let dx = 0; dx <= m - n; dx++) {
      let [sum, squares, product] = [0, 0, 0]
      for (let y = 0; y < n; y++)
        for (let x = 0; x < n; x++) {
          const v = other[(y + dy) * m + x + dx] ?? 0
          sum += v
          squares += v * v
          product += v * (own[y * n + x] ?? 0)
        }
      const otherSpread = Math.sqrt(Math.max(0, squares - (sum * sum) / (n * n)))
      if (otherSpread > 0) most = Math.max(most, (product - mean * sum) / (spread * otherSpread))
    }
  return most
}
