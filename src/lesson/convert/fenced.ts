/** What stands in a fence, as it is in the file. */
export interface Fenced {
  readonly text: string
  /** Where it starts, counted from the start of the fence. */
  readonly start: number
}

/**
 * The lines between an opening and a closing fence, with their indent: YAML does not mind one that all lines have.
 *
 * @param raw from the first backtick of the opening fence to the last of the closing one.
 * @returns undefined when the fence is never closed.
 */
export function fenced(raw: string): Fenced | undefined {
  const fence = /^(`{3,}|~{3,})/.exec(raw)?.[1]
  const first = /\r\n?|\n/.exec(raw)
  const last = /(?:\r\n?|\n)[ \t]*(`{3,}|~{3,})[ \t]*$/.exec(raw)
  if (!fence || !first || !last?.[1]?.startsWith(fence)) return undefined
  const start = first.index + first[0].length
  // YAML knows no line that ends with CR alone; the text keeps its length.
  return { text: raw.slice(start, Math.max(start, last.index)).replace(/\r(?!\n)/g, '\n'), start }
}
