import type { Flat } from './told.ts'

/** Whether a point is inside a closed loop. */
export function isInside([x, y]: Flat, loop: readonly Flat[]): boolean {
  let inside = false
  for (const [i, [p, q]] of loop.entries()) {
    const [r, s] = loop[(i + 1) % loop.length] ?? [p, q]
    if (q > y !== s > y && x < ((r - p) * (y - q)) / (s - q) + p) inside = !inside
  }
  return inside
}

/** More than 0 for a loop that runs counter-clockwise. */
export const area = (loop: readonly Flat[]): number =>
  loop.reduce((sum, [x, y], i) => {
    const [p, q] = loop[(i + 1) % loop.length] ?? [x, y]
    return sum + (x * q - p * y) / 2
  }, 0)
