/** A line of a terminal, unless it is wider. */
export const terminalWidth = 80

/** Columns that a text takes in a terminal: one for each character that is not a combining mark. */
export const widthOf = (text: string): number => [...text.replaceAll(/\p{Mark}/gu, '')].length

/** A text in lines of at most `width` columns, broken between words; a longer word has a line of its own. */
export function wrapText(text: string, width: number): string[] {
  const lines: string[] = []
  for (const word of text.split(' ')) {
    const last = lines.at(-1)
    if (last !== undefined && widthOf(`${last} ${word}`) <= width) lines[lines.length - 1] = `${last} ${word}`
    else lines.push(word)
  }
  return lines
}

/** Lines beside lines: those on the right start at column `at`, or two columns behind the widest on the left. */
export function beside(left: readonly string[], right: readonly string[], at: number): string[] {
  const start = Math.max(at, ...left.map((line) => widthOf(line) + 2))
  return Array.from({ length: Math.max(left.length, right.length) }, (_, i) => {
    const line = left[i] ?? ''
    return `${line}${' '.repeat(start - widthOf(line))}${right[i] ?? ''}`.trimEnd()
  })
}
