/** More levels than any file of ours has, and far fewer than the parser's own stack holds. */
const deepest = 100

/** What opens a list or a key in front of what stands in the line. */
const opening = /^(?: *[-?](?= ))+/

/**
 * Where a YAML text gets so deep that it must not be parsed: the parser calls itself for each level, and with thousands
 * of them the program would end. Levels are counted generously: brackets in quoted words count too.
 *
 * @returns the offset in the text; undefined when it may be parsed.
 */
export function tooDeepAt(text: string): number | undefined {
  let open = 0
  let start = 0
  const indents: number[] = []
  for (const line of text.split('\n')) {
    const indent = line.length - line.trimStart().length
    if (indent < line.length) {
      while ((indents.at(-1) ?? -1) >= indent) indents.pop()
      indents.push(indent)
    }
    const [before = ''] = opening.exec(line) ?? []
    if (indents.length + before.split(/[-?]/).length - 1 > deepest) return start + indent
    let keys = 0
    for (const { 0: sign, index } of line.matchAll(/[[\]{},]|:(?= )/g)) {
      if (sign === '[' || sign === '{') open++
      else if (sign === ']' || sign === '}') open = Math.max(0, open - 1)
      // A key in a value is one level more, unless a comma in brackets has ended the one before.
      else if (sign === ':') keys++
      else if (open > 0) keys = 0
      if (open > deepest || keys > deepest) return start + index
    }
    start += line.length + 1
  }
  return undefined
}
