import type { Spot } from './num.ts'

/** An upright rectangle of a drawing in mm, y downwards. */
export interface Box {
  readonly left: number
  readonly top: number
  readonly right: number
  readonly bottom: number
}

/** The box of all spots, grown by `by` on every side. */
export function boxAround(spots: readonly Spot[], by = 0): Box {
  const [xs, ys] = [spots.map((s) => s[0]), spots.map((s) => s[1])]
  return {
    left: Math.min(...xs) - by,
    top: Math.min(...ys) - by,
    right: Math.max(...xs) + by,
    bottom: Math.max(...ys) + by,
  }
}

/** The corners of a box, from the upper left one to the right. */
export const cornersOf = ({ left, top, right, bottom }: Box): Spot[] => [
  [left, top],
  [right, top],
  [right, bottom],
  [left, bottom],
]

/** The smallest box that holds all of them. */
export const boxOf = (boxes: readonly Box[]): Box => ({
  left: Math.min(...boxes.map((b) => b.left)),
  top: Math.min(...boxes.map((b) => b.top)),
  right: Math.max(...boxes.map((b) => b.right)),
  bottom: Math.max(...boxes.map((b) => b.bottom)),
})

/** Whether two boxes come nearer to one another than `gap`. */
export const near = (a: Box, b: Box, gap = 0): boolean =>
  a.left < b.right + gap && b.left < a.right + gap && a.top < b.bottom + gap && b.top < a.bottom + gap

/** Whether a straight line comes nearer to a box than `gap`. */
export function lineNear(box: Box, [x1, y1]: Spot, [x2, y2]: Spot, gap = 0): boolean {
  // Liang and Barsky: the share of the line that lies inside each of the four edges.
  let [enter, leave] = [0, 1]
  for (const [step, room] of [
    [x1 - x2, x1 - (box.left - gap)],
    [x2 - x1, box.right + gap - x1],
    [y1 - y2, y1 - (box.top - gap)],
    [y2 - y1, box.bottom + gap - y1],
  ] as const) {
    if (step === 0 && room <= 0) return false
    if (step < 0) enter = Math.max(enter, room / step)
    if (step > 0) leave = Math.min(leave, room / step)
  }
  return enter < leave
}
