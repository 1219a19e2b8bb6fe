/** Where in a YAML text something is being written. */
export interface YamlSite {
  /** Keys from the top down. Of a value its own key is the last; of a key it is not there. Items of a list have none. */
  readonly path: readonly string[]
  readonly at: 'key' | 'value'
  /** What stands there up to the cursor, and where it begins. */
  readonly word: string
  readonly from: number
}

/** An open mapping or list: by indent, or by a bracket. */
type Frame =
  | { readonly by: 'indent'; readonly indent: number; readonly key: string }
  | { readonly by: 'bracket'; readonly map: boolean; key?: string }

const entry = /^([ \t]*)((?:-[ \t]+)*)([^\s#'"{}[\],:-][^#{}[\],:]*?)[ \t]*:(?:[ \t]+|$)/

/**
 * Where the end of a half-written YAML text stands. It reads lines, indents and brackets only, so that a text that is
 * no YAML yet has an answer too.
 *
 * @param text up to the cursor.
 */
export function yamlSite(text: string): YamlSite {
  const frames: Frame[] = []
  const start = text.lastIndexOf('\n') + 1
  for (const line of text.slice(0, start).split('\n').slice(0, -1)) readLine(line, frames)
  const line = text.slice(start)
  if (!isInBracket(frames)) {
    const found = entry.exec(line)
    if (found === null) {
      const [before = '', dashes = ''] = /^[ \t]*((?:-[ \t]+)*)/.exec(line) ?? []
      const inList = dashes !== ''
      closeTo(frames, indentOf(before))
      const opened = openBrackets(line.slice(before.length), frames)
      return opened ?? siteOf(frames, inList ? 'value' : 'key', line, before.length, start)
    }
    closeTo(frames, indentOf(found[1] ?? '') + (found[2] ?? '').length)
    frames.push({
      by: 'indent',
      indent: indentOf(found[1] ?? '') + (found[2] ?? '').length,
      key: found[3] ?? '',
    })
    const rest = line.slice(found[0].length)
    readBrackets(rest, frames)
    if (!isInBracket(frames)) return siteOf(frames, 'value', line, found[0].length, start)
  } else readBrackets(line, frames)
  return inBracket(frames, text)

  function openBrackets(rest: string, all: Frame[]): YamlSite | undefined {
    readBrackets(rest, all)
    return isInBracket(all) ? inBracket(all, text) : undefined
  }
}

function siteOf(
  frames: readonly Frame[],
  at: YamlSite['at'],
  line: string,
  column: number,
  start: number,
): YamlSite {
  return { path: pathOf(frames), at, word: line.slice(column), from: start + column }
}

/** In brackets what is written begins behind the last comma, bracket or colon. */
function inBracket(frames: readonly Frame[], text: string): YamlSite {
  const frame = frames.at(-1)
  const [word = ''] = /[^\s,[\]{}:][^,[\]{}:]*$/.exec(text) ?? []
  const isKey = frame?.by === 'bracket' && frame.map && frame.key === undefined
  return { path: pathOf(frames), at: isKey ? 'key' : 'value', word, from: text.length - word.length }
}

function readLine(line: string, frames: Frame[]): void {
  if (/^[ \t]*(?:#|$)/.test(line)) return
  const found = isInBracket(frames) ? null : entry.exec(line)
  if (!found) {
    readBrackets(line.replace(/[ \t]#.*$/, ''), frames)
    return
  }
  const indent = indentOf(found[1] ?? '') + (found[2] ?? '').length
  closeTo(frames, indent)
  frames.push({ by: 'indent', indent, key: found[3] ?? '' })
  readBrackets(line.slice(found[0].length).replace(/[ \t]#.*$/, ''), frames)
}

/** Follows brackets through a piece of a line; quotation marks hide them. */
function readBrackets(text: string, frames: Frame[]): void {
  let word = ''
  let quote = ''
  for (const [i, mark] of [...text].entries()) {
    const inner = frames.at(-1)
    if (quote !== '') {
      if (mark === quote) quote = ''
    } else if ((mark === '"' || mark === "'") && word.trim() === '') quote = mark
    else if (mark === '{' || mark === '[') {
      frames.push({ by: 'bracket', map: mark === '{' })
      word = ''
    } else if ((mark === '}' || mark === ']') && inner?.by === 'bracket') {
      frames.pop()
      word = ''
    } else if (inner?.by === 'bracket' && mark === ',') {
      delete inner.key
      word = ''
    } else if (inner?.by === 'bracket' && inner.map && mark === ':' && /^(?:\s|$)/.test(text.slice(i + 1))) {
      inner.key ??= word.trim()
      word = ''
    } else word += mark
  }
}

const isInBracket = (frames: readonly Frame[]): boolean => frames.at(-1)?.by === 'bracket'

function closeTo(frames: Frame[], indent: number): void {
  while (frames.length > 0) {
    const last = frames.at(-1)
    if (last?.by === 'indent' && last.indent < indent) return
    frames.pop()
  }
}

const indentOf = (space: string): number => space.length

const pathOf = (frames: readonly Frame[]): string[] =>
  frames.flatMap(({ key }) => (key === undefined ? [] : [key]))
