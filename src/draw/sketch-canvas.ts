/** A place on a grid of characters: columns to the right, rows downwards. */
export type Cell = readonly [column: number, row: number]

/** Characters on a grid, later ones over earlier ones. */
export interface Canvas {
  /** Draws from one cell to another, in one character or in the one that goes that way. */
  line(from: Cell, to: Cell, pen: string | ((from: Cell, to: Cell) => string)): void
  /** The rows from the top, without spaces at their ends. */
  rows(): string[]
}

export function canvas(): Canvas {
  const cells: string[][] = []
  const put = ([column, row]: Cell, character: string): void => {
    while (cells.length <= row) cells.push([])
    const line = cells[row] ?? []
    while (line.length < column) line.push(' ')
    line[column] = character
  }
  return {
    line(from, to, pen) {
      const [across, down] = [to[0] - from[0], to[1] - from[1]]
      const steps = Math.max(Math.abs(across), Math.abs(down))
      const character = typeof pen === 'string' ? pen : pen(from, to)
      for (let i = 0; i <= steps; i++) {
        const share = steps === 0 ? 0 : i / steps
        put([Math.round(from[0] + across * share), Math.round(from[1] + down * share)], character)
      }
    },
    rows: () => cells.map((line) => line.join('').trimEnd()),
  }
}

/** What a cut looks like: level, upright or slanting. */
export function cutPen([x0, y0]: Cell, [x1, y1]: Cell): string {
  if (y0 === y1) return '-'
  if (x0 === x1) return '|'
  return x1 > x0 === y1 > y0 ? '\\' : '/'
}
