const mark = '\ufeff'

/** A text as an editor has it: lines end in one way, and no byte order mark stands before them. */
export const plainText = (text: string): string => text.replace(/^\ufeff/, '').replace(/\r\n?/g, '\n')

/**
 * A text written as its file was: with the byte order mark, if there was one, and with the same ends of lines. Lines
 * before and behind what was changed keep their own; the others have the one that most lines had.
 *
 * @param before the file as it was, unchanged.
 */
export function asWritten(text: string, before: string): string {
  const lines = plainText(text).split('\n')
  const old = linesOf(before.replace(/^\ufeff/, ''))
  const usual = usualEnd(old)
  const most = Math.min(lines.length, old.length)
  let head = 0
  while (head < most && lines[head] === old[head]?.line) head++
  let tail = 0
  while (tail < most - head && lines.at(-1 - tail) === old.at(-1 - tail)?.line) tail++
  // Where no line has come or gone, the changed ones keep their ends as well.
  const asMany = lines.length === old.length
  const endOf = (i: number): string => {
    const behind = lines.length - i
    if (behind === 1) return ''
    const same = i < head || asMany ? old[i] : behind <= tail ? old.at(-behind) : undefined
    return same?.end || usual
  }
  const ends = lines.map((_, i) => endOf(i))
  const ended = lines.map((line, i) => {
    // Before an empty line that ends with `\n`, a `\r` would make one end of the two.
    const meets = ends[i] === '\r' && lines[i + 1] === '' && ends[i + 1] === '\n'
    return line + (meets ? '\n' : ends[i])
  })
  return (before.startsWith(mark) ? mark : '') + ended.join('')
}

interface Line {
  readonly line: string
  readonly end: string
}

function linesOf(text: string): Line[] {
  const parts = text.split(/(\r\n?|\n)/)
  return parts.flatMap((line, i) => (i % 2 === 0 ? [{ line, end: parts[i + 1] ?? '' }] : []))
}

function usualEnd(lines: readonly Line[]): string {
  const counts = new Map<string, number>([['\n', 0]])
  for (const { end } of lines) if (end !== '') counts.set(end, (counts.get(end) ?? 0) + 1)
  return [...counts].reduce((best, other) => (other[1] > best[1] ? other : best))[0]
}
