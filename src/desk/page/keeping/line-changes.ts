/** A row of two texts laid side by side. */
export interface Row {
  readonly mine?: string
  readonly theirs?: string
  /** Numbers of the lines, from 1. */
  readonly mineLine?: number
  readonly theirsLine?: number
  readonly same: boolean
}

/** Larger tables of lines are not worked out: what differs then stands as one stretch. */
const mostCells = 4_000_000

/** Two texts line by line: equal lines beside each other, and as many of them as possible. */
export function lineChanges(mine: string, theirs: string): readonly Row[] {
  const a = mine.split('\n')
  const b = theirs.split('\n')
  let head = 0
  while (head < a.length && head < b.length && a[head] === b[head]) head++
  let tail = 0
  while (tail < Math.min(a.length, b.length) - head && a[a.length - 1 - tail] === b[b.length - 1 - tail])
    tail++
  const equal = commonLines(a.slice(head, a.length - tail), b.slice(head, b.length - tail))
  const pairs = [
    ...Array.from({ length: head }, (_, i) => [i, i] as const),
    ...equal.map(([i, j]) => [i + head, j + head] as const),
    ...Array.from({ length: tail }, (_, i) => [a.length - tail + i, b.length - tail + i] as const),
  ]
  const rows: Row[] = []
  let i = 0
  let j = 0
  for (const [nextI, nextJ] of [...pairs, [a.length, b.length] as const]) {
    while (i < nextI || j < nextJ) {
      rows.push({
        ...(i < nextI && { mine: a[i] ?? '', mineLine: i + 1 }),
        ...(j < nextJ && { theirs: b[j] ?? '', theirsLine: j + 1 }),
        same: false,
      })
      if (i < nextI) i++
      if (j < nextJ) j++
    }
    if (i < a.length && j < b.length) {
      rows.push({ mine: a[i] ?? '', theirs: b[j] ?? '', mineLine: i + 1, theirsLine: j + 1, same: true })
      i++
      j++
    }
  }
  return rows
}

/** A longest sequence of lines that both have, as pairs of places, by the table of Wagner and Fischer. */
function commonLines(a: readonly string[], b: readonly string[]): readonly (readonly [number, number])[] {
  const width = b.length + 1
  if ((a.length + 1) * width > mostCells) return []
  /** Length of the longest common sequence of what follows. */
  const longest = new Uint32Array((a.length + 1) * width)
  const at = (i: number, j: number): number => longest[i * width + j] ?? 0
  for (let i = a.length - 1; i >= 0; i--)
    for (let j = b.length - 1; j >= 0; j--)
      longest[i * width + j] = a[i] === b[j] ? at(i + 1, j + 1) + 1 : Math.max(at(i + 1, j), at(i, j + 1))
  const pairs: (readonly [number, number])[] = []
  for (let i = 0, j = 0; i < a.length && j < b.length; )
    if (a[i] === b[j]) pairs.push([i++, j++])
    else if (at(i + 1, j) >= at(i, j + 1)) i++
    else j++
  return pairs
}

/** A line in which words differ: what both have before and behind, and its own between. */
export interface Parts {
  readonly before: string
  readonly own: string
  readonly behind: string
}

/** What one of two lines has of its own, by whole words. */
export function ownWords(line: string, other: string): Parts {
  const a = line.split(/(?<=\s)/)
  const b = other.split(/(?<=\s)/)
  let head = 0
  while (head < a.length && head < b.length && a[head] === b[head]) head++
  let tail = 0
  while (tail < Math.min(a.length, b.length) - head && a.at(-1 - tail) === b.at(-1 - tail)) tail++
  const end = a.length - tail
  const own = a.slice(head, end).join('')
  const bare = own.trimEnd()
  const behind = own.slice(bare.length) + a.slice(end).join('')
  return { before: a.slice(0, head).join(''), own: bare, behind }
}
