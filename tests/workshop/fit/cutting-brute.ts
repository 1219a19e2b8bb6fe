/** A rectangle of whole numbers. */
export interface Rect {
  readonly width: number
  readonly height: number
  readonly turns: boolean
}

/**
 * Whether rectangles come out of sheets with cuts from edge to edge, by trying every cut of every sheet at every mark
 * and every way to share the pieces out: slow, and with nothing in common with the program.
 */
export function comesOut(pieces: readonly Rect[], sheets: readonly (readonly [number, number])[]): boolean {
  const known = new Map<string, boolean>()
  /** Whether exactly these pieces come out of one sheet. */
  const from = (mask: number, width: number, height: number): boolean => {
    const list = pieces.filter((_, i) => mask & (1 << i))
    if (list.length === 0) return true
    if (list.reduce((sum, p) => sum + p.width * p.height, 0) > width * height) return false
    const [one] = list
    if (list.length === 1 && one) {
      if (one.width <= width && one.height <= height) return true
      return one.turns && one.height <= width && one.width <= height
    }
    const key = `${mask} ${width} ${height}`
    const before = known.get(key)
    if (before !== undefined) return before
    let found = false
    for (let part = (mask - 1) & mask; part > 0 && !found; part = (part - 1) & mask) {
      for (let x = 1; x < width && !found; x++)
        found = from(part, x, height) && from(mask ^ part, width - x, height)
      for (let y = 1; y < height && !found; y++)
        found = from(part, width, y) && from(mask ^ part, width, height - y)
    }
    known.set(key, found)
    return found
  }
  const share = (mask: number, at: number): boolean => {
    const sheet = sheets[at]
    if (!sheet) return mask === 0
    for (let part = mask; ; part = (part - 1) & mask) {
      if (from(part, ...sheet) && share(mask ^ part, at + 1)) return true
      if (part === 0) return false
    }
  }
  return share((1 << pieces.length) - 1, 0)
}
