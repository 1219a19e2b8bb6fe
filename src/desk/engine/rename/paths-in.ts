import { tokens } from '../../../length/tokens.ts'

/** A name of an expression with its parts, and where each of them stands. */
export interface PlacedPath {
  readonly path: readonly string[]
  readonly words: readonly { readonly start: number; readonly end: number }[]
}

/** Every name of an expression, also of one that is not whole yet. Offsets count from the beginning of the text. */
export function pathsWithPlaces(text: string): PlacedPath[] {
  const found: { path: string[]; words: { start: number; end: number }[] }[] = []
  let isPart = false
  let open = false
  for (const token of tokens(text.replace(/[\r\n]/g, ' '))) {
    const { start, end } = token
    if (token.kind === 'sign' && token.text === '.') {
      isPart = open
      continue
    }
    const last = found.at(-1)
    if (isPart && last && (token.kind === 'name' || token.kind === 'number')) {
      last.path.push(token.kind === 'name' ? token.text : token.value.toString())
      last.words.push({ start, end })
    } else if (token.kind === 'name') {
      // Behind `as` stands a unit.
      const isUnit = /\bas\s+$/.test(text.slice(0, start))
      if (!isUnit) found.push({ path: [token.text], words: [{ start, end }] })
      open = !isUnit
      isPart = false
      continue
    } else open = false
    isPart = false
  }
  return found
}
