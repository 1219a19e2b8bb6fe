/** A change of a text: what stands from `start` to `end` becomes `text`. */
export interface Edit {
  readonly start: number
  readonly end: number
  readonly text: string
}

/** A text with changes made that do not overlap; every other character is kept. */
export function applyEdits(text: string, edits: readonly Edit[]): string {
  let at = 0
  let result = ''
  for (const edit of [...edits].sort((a, b) => a.start - b.start)) {
    result += text.slice(at, edit.start) + edit.text
    at = edit.end
  }
  return result + text.slice(at)
}

/** How the lines of a text end. */
export const lineEnding = (text: string): string => /\r\n|\r|\n/.exec(text)?.[0] ?? '\n'
