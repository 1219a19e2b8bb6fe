/** Something in a style sheet that is not closed, or closed and never opened. */
export interface OpenCss {
  readonly line: number
  readonly column: number
  readonly message: string
  readonly suggestion: string
}

/** A comment, a string, a character behind a backslash, an address without quotes, a bracket, the end of a line. */
const tokens =
  /\/\*(?:[\s\S]*?\*\/)?|"[^"\\\n]*(?:\\[\s\S][^"\\\n]*)*"?|'[^'\\\n]*(?:\\[\s\S][^'\\\n]*)*'?|\\[\s\S]|url\(\s*(?!["'\s])[^)]*\)?|[{}()[\]]/gi

const closing: Readonly<Record<string, string>> = { '{': '}', '(': ')', '[': ']' }

/**
 * The first thing in a style sheet that is left open. A browser says nothing of it and leaves out what comes behind, so a
 * teacher would look for it in vain.
 */
export function openCss(css: string): OpenCss | undefined {
  const told = (offset: number, message: string, suggestion: string): OpenCss => {
    const before = css.slice(0, offset).split('\n')
    return { line: before.length, column: (before.at(-1)?.length ?? 0) + 1, message, suggestion }
  }
  const open: { sign: string; offset: number }[] = []
  for (const { 0: token, index } of css.matchAll(tokens)) {
    const [sign = ''] = token
    if (token.startsWith('/*')) {
      if (!token.endsWith('*/') || token.length < 4)
        return told(index, 'this comment is never closed', 'Write `*/` at its end')
    } else if (sign === '"' || sign === "'") {
      if (token.length < 2 || !token.endsWith(sign))
        return told(index, `this text is not closed on its line`, `Write \`${sign}\` at its end`)
    } else if (/^url\(/i.test(token)) {
      if (!token.endsWith(')')) return told(index, 'this bracket is never closed', 'Write `)` behind it')
    } else if (sign in closing) open.push({ sign, offset: index })
    else if (sign !== '\\') {
      const last = open.pop()
      if (!last)
        return told(index, `this \`${sign}\` closes nothing`, 'Take it out, or look for what it should close')
      if (closing[last.sign] !== sign)
        return told(last.offset, `this bracket is never closed`, `Write \`${closing[last.sign]}\` behind it`)
    }
  }
  const last = open.at(-1)
  return (
    last && told(last.offset, 'this bracket is never closed', `Write \`${closing[last.sign]}\` at its end`)
  )
}
