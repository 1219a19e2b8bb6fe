/** Call-outs nested deeper than this are read as text: each level is read anew for every level around it. */
const deepest = 30

const fence = /^[ \t>]*(:{3,})[ \t]*(\p{L}*)/gmu

/** Whether the call-outs of a text are nested deeper than anybody means to, mostly because none is ever closed. */
export function isTooNested(text: string): boolean {
  const open: number[] = []
  for (const [, colons = '', name] of text.matchAll(fence)) {
    if (name) open.push(colons.length)
    else {
      // A closing line closes the outermost call-out that has no more colons.
      const closed = open.findIndex((size) => size <= colons.length)
      if (closed >= 0) open.length = closed
    }
    if (open.length > deepest) return true
  }
  return false
}
