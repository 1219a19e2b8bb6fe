import { decodeNamedCharacterReference } from 'decode-named-character-reference'

const reference = /&(?:#(\d{1,7})|#[xX]([\da-fA-F]{1,6})|([A-Za-z][A-Za-z\d]{0,31}));/y
/** What stands between the lines of a text in a list, a quotation or a call-out. */
const betweenLines = /[ \t]*(?:\r\n?|\n)(?:[ \t]*>?)*/y

/**
 * Where each character of a text node stands in what it was read from: an escape has a backslash before it, a reference
 * such as `&amp;` is longer than what it means, and lines have an indent.
 *
 * @returns an offset into `raw` for each UTF-16 code unit of `value`, and the end as one more; undefined when the two do
 * not go together.
 */
export function alignment(raw: string, value: string): readonly number[] | undefined {
  if (raw === value) return Array.from({ length: raw.length + 1 }, (_, i) => i)
  const offsets: number[] = []
  let at = 0
  for (let i = 0; i < value.length; ) {
    const [length, means] = next(raw, at)
    if (at >= raw.length || !value.startsWith(means, i)) return undefined
    for (let k = 0; k < means.length; k++) offsets.push(at)
    i += means.length
    at += length
  }
  offsets.push(at)
  return offsets
}

/** How many characters of `raw` stand for what comes next, and what that is. */
function next(raw: string, at: number): [length: number, means: string] {
  const c = raw[at] ?? ''
  if (c === '\\' && /[!-/:-@[-`{-~]/.test(raw[at + 1] ?? '')) return [2, raw[at + 1] ?? '']
  reference.lastIndex = at
  const found = c === '&' ? reference.exec(raw) : null
  const means = found && meaningOf(found)
  if (found && means) return [found[0].length, means]
  betweenLines.lastIndex = at
  const gap = /[ \t\r\n]/.test(c) ? betweenLines.exec(raw) : null
  return gap ? [gap[0].length, '\n'] : [1, c]
}

function meaningOf([, decimal, hex, name]: RegExpExecArray): string | undefined {
  if (name !== undefined) return decodeNamedCharacterReference(name) || undefined
  const code = decimal === undefined ? Number.parseInt(hex ?? '', 16) : Number(decimal)
  return code > 0 && code <= 0x10ffff ? String.fromCodePoint(code) : '\ufffd'
}
