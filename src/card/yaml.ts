import { isAlias, isMap, isScalar, isSeq, LineCounter, type Node, parseDocument, Scalar } from 'yaml'
import type { Finding, Place } from '../length/finding.ts'
import { tooDeepAt } from './yaml-depth.ts'

/** A YAML text inside a file: a fenced block, the front matter, or a file of its own. */
export interface YamlBlock {
  /** The word behind `card` in the fence, or `card`. */
  readonly name: string
  readonly text: string
  /** Where the first character of `text` stands in the file; its lines are not indented any further. */
  readonly place: Required<Pick<Place, 'line' | 'column' | 'offset'>>
}

/** What stands in a YAML text, with its places. Scalars stay text: a length, a name and a count are told apart later. */
export type Entry = { readonly place: Place } & (
  | {
      readonly kind: 'text'
      readonly text: string /** Offset of `text` in the file, if it stands there as it is. */
      readonly plain: boolean
    }
  | { readonly kind: 'list'; readonly items: readonly Entry[] }
  | { readonly kind: 'map'; readonly fields: Fields }
  | { readonly kind: 'empty' }
)

export interface Field {
  readonly key: string
  readonly keyPlace: Place
  readonly value: Entry
}
export type Fields = ReadonlyMap<string, Field>

/** Anchors and aliases may not blow a small file up. */
const mostAliases = 20
/** In a text that is no YAML at all each word is a mistake: so many are told. */
const mostMistakes = 50
/** A file nested deeper than this is refused rather than followed. */
const deepest = 20
/** Characters: what anybody writes by hand has a tenth of it. */
const longest = 100_000

/**
 * Reads YAML 1.2 with positions. Whatever can be read is given even when findings say that something cannot.
 *
 * @returns the top mapping (empty when there is none), and findings with places in the file.
 */
export function readYaml(block: Pick<YamlBlock, 'text' | 'place'>): {
  top: Field & { value: Entry & { kind: 'map' } }
  findings: Finding[]
} {
  const findings: Finding[] = []
  // The parser itself does not count the lines behind a mistake.
  const lines = new LineCounter()
  lines.addNewLine(0)
  for (const { index } of block.text.matchAll(/\n/g)) lines.addNewLine(index + 1)
  const deep = tooDeepAt(block.text)
  const isLong = deep === undefined && block.text.length > longest
  const document = parsed(isLong || deep !== undefined ? '' : block.text)
  const placeOf = (start: number, end: number): Place => {
    const { line, col } = lines.linePos(start)
    return {
      line: block.place.line + line - 1,
      column: line === 1 ? block.place.column + col - 1 : col,
      offset: block.place.offset + start,
      end: block.place.offset + end,
    }
  }
  const report = (message: string, suggestion: string, place: Place, rule = 'yaml') =>
    findings.push({ rule, severity: 'error', message, suggestion, place })
  const tooMuch = `This has ${block.text.length} characters, and ${longest} is the most: it is not read`
  if (isLong) report(tooMuch, 'Leave out what is not needed', placeOf(0, 1), 'too-much')
  if (deep !== undefined) report('This is nested too deeply', 'Take a level out', placeOf(deep, deep + 1))
  for (const error of document.errors.slice(0, mostMistakes)) {
    const [start, end] = error.pos
    const wrong = sentence(error.message)
    report(`This is not well-formed YAML: ${wrong}`, cure(error.code, error.message), placeOf(start, end))
  }
  const isRepeated = document.errors.some(({ code }) => code === 'DUPLICATE_KEY')
  let aliases = 0
  const read = (node: Node | null | undefined, depth: number, fallback: Place): Entry => {
    const place = node?.range ? placeOf(node.range[0], node.range[1]) : fallback
    if (depth > deepest) {
      report('This is nested too deeply', 'Take a level out', place)
      return { kind: 'empty', place }
    }
    if (isAlias(node)) {
      if (++aliases <= mostAliases)
        return { ...read(node.resolve(document) as Node | undefined, depth + 1, place), place }
      report('Too many aliases', 'Write the value out', place)
      return { kind: 'empty', place }
    }
    if (isSeq(node))
      return { kind: 'list', place, items: node.items.map((item) => read(item as Node, depth + 1, place)) }
    if (isMap(node)) {
      const fields = new Map<string, Field>()
      for (const pair of node.items) {
        const keyNode = pair.key as Node | null
        const key = keyOf(keyNode)
        const keyPlace = keyNode?.range ? placeOf(keyNode.range[0], keyNode.range[1]) : place
        if (key === '') {
          report('This key has no name', 'Write a name before the colon, or take the line out', keyPlace)
          continue
        }
        // Blanks around a key, and how its accents are written, are no difference to us, but are one to the library.
        if (fields.has(key) && !isRepeated)
          report(`The key \`${key}\` is there twice`, 'Give each key once', keyPlace)
        fields.set(key, { key, keyPlace, value: read(pair.value as Node | null, depth + 1, keyPlace) })
      }
      return { kind: 'map', place, fields }
    }
    if (isScalar(node) && node.value !== null && node.value !== '') {
      // An accent may be a character of its own: names are the same all the same.
      const written = String(node.value)
      const text = written.normalize('NFC')
      return { kind: 'text', place, text, plain: node.type === Scalar.PLAIN && text === written }
    }
    return { kind: 'empty', place }
  }
  const start = placeOf(0, 0)
  const entry = read(document.contents as Node | null, 0, start)
  if (entry.kind !== 'map' && entry.kind !== 'empty')
    report('Expected keys and values here', 'Write one `key: value` a line', entry.place)
  const value =
    entry.kind === 'map' ? entry : { kind: 'map' as const, place: start, fields: new Map<string, Field>() }
  return { top: { key: '', keyPlace: start, value }, findings }
}

/** A key as it is compared; what is no word, such as a list, is none. */
const keyOf = (node: Node | null): string =>
  isScalar(node)
    ? String(node.value ?? '')
        .trim()
        .normalize('NFC')
    : ''

const parsed = (text: string) =>
  parseDocument(text, {
    version: '1.2',
    schema: 'failsafe',
    merge: false,
    // Its own drawing of each mistake is not shown, and takes long in a long text.
    prettyErrors: false,
  })

/** The library's message without its own position and drawing. */
const sentence = (message: string): string =>
  (message.split(' at line ')[0] ?? message).split('\n')[0] ?? message

function cure(code: string, message: string): string {
  if (/end with a [\]}]/.test(message)) return 'Close the bracket that is open'
  if (code === 'DUPLICATE_KEY') return 'Give each key once'
  if (code === 'TAB_AS_INDENT' || code === 'BAD_INDENT') return 'Indent with the same number of spaces'
  if (code === 'MISSING_CHAR') return 'Close the bracket, brace or quotation mark that is open'
  return 'Check the indentation, the colons and the brackets of this line and the one before'
}
