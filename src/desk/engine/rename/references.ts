import { visit } from 'unist-util-visit'
import { type Entry, readYaml, type YamlBlock } from '../../../card/yaml.ts'
import type { Lesson } from '../../../lesson/lesson.ts'
import { placeIn } from '../../../lesson/measure.ts'
import { type Find, type Hit, type Hits, hitsOf, isNamePlace } from './own-names.ts'
import { type PlacedPath, pathsWithPlaces } from './paths-in.ts'

/** A place at which a card's own name stands, as it is in the file. */
export interface Reference {
  readonly card: string
  readonly name: string
  readonly from: number
  readonly to: number
  /** Whether a name of several words needs quotation marks around it there. */
  readonly bare: boolean
}

/** What holds words, and never a name of the card. */
const wordKeys: ReadonlySet<string> = new Set([
  ...['fold', 'stock', 'weight', 'bulk', 'caliper', 'direction', 'letters', 'make', 'side', 'rests', 'along'],
])

/** Every place of a lesson at which one of its cards' own names stands, in the order of the file. */
export function referencesIn(lesson: Lesson): Reference[] {
  const blocks = lesson.cards.map((block) => {
    const { top } = readYaml(block)
    return { block, top: top.value, hits: hitsOf(top.value) }
  })
  /** The own names in a path of the words, with the card that they are of. */
  const find: Find = (path) => {
    const named = blocks.find(({ block, hits }) => block.name === path[0] && hits(path.slice(1)).length > 0)
    if (named)
      return named.hits(path.slice(1)).map(({ at, name }) => ({ card: named.block.name, at: at + 1, name }))
    const having = blocks.filter(({ hits }) => hits(path).length > 0)
    const [only, ...more] = having
    return only && more.length === 0 ? only.hits(path).map((hit) => ({ card: only.block.name, ...hit })) : []
  }
  const found = [
    ...blocks.flatMap(({ block, top, hits }) => inBlock(lesson.source.text, block, top, hits)),
    ...(lesson.supplies ? inSupplies(lesson.source.text, lesson.supplies, find) : []),
  ]
  visit(lesson.tree, 'measure', (node) => {
    for (const { path, words } of pathsWithPlaces(node.value))
      for (const { card, at, name } of find(path)) {
        const word = words[at]
        const { offset } = word ? placeIn(node, word.start, word.end) : {}
        if (offset !== undefined)
          found.push({ card, name, from: offset, to: offset + name.length, bare: false })
      }
  })
  visit(lesson.tree, 'figure', ({ of, data }) => {
    const { offset, end } = data?.ofPlace ?? {}
    if (of === undefined || offset === undefined || end === undefined) return
    // A value that is written in another way than it is read, such as with `&amp;`, is left alone.
    if (lesson.source.text.slice(offset, end) !== of) return
    const path = of.includes('.') ? [of.slice(0, of.indexOf('.')), of.slice(of.indexOf('.') + 1)] : [of]
    const bare = lesson.source.text[offset - 1] === '='
    for (const { card, at, name } of find(path)) {
      const from = at === 0 ? offset : end - (path[at] ?? '').length
      found.push({ card, name, from, to: from + name.length, bare })
    }
  })
  return found.sort((a, b) => a.from - b.from)
}

function inBlock(text: string, block: YamlBlock, top: Entry & { kind: 'map' }, hits: Hits): Reference[] {
  const card = block.name
  const walk = (entry: Entry, path: readonly string[]): Reference[] => {
    if (entry.kind === 'list') return entry.items.flatMap((item) => walk(item, path))
    if (entry.kind === 'text') return wordKeys.has(path.at(-1) ?? '') ? [] : inText(text, entry, card, hits)
    if (entry.kind !== 'map') return []
    return [...entry.fields.values()].flatMap(({ key, keyPlace, value }) => {
      const start = isNamePlace(path) ? text.indexOf(key, keyPlace.offset) : -1
      const own = start >= 0 && start + key.length <= (keyPlace.end ?? 0)
      return [
        ...(own ? [{ card, name: key, from: start, to: start + key.length, bare: false }] : []),
        ...walk(value, [...path, key]),
      ]
    })
  }
  return walk(top, [])
}

/** In a value of a card block: a name alone, or the names of an expression. */
function inText(text: string, entry: Entry & { kind: 'text' }, card: string, hits: Hits): Reference[] {
  const start = startOf(text, entry)
  if (start === undefined) return []
  return pathsWithPlaces(entry.text).flatMap((path) => placed(hits(path.path), path, start, card))
}

const placed = (hits: readonly Hit[], { words }: PlacedPath, start: number, card: string): Reference[] =>
  hits.flatMap(({ at, name }) => {
    const word = words[at]
    if (!word) return []
    const from = start + word.start
    return [{ card, name, from, to: from + name.length, bare: false }]
  })

function inSupplies(text: string, block: YamlBlock, find: Find): Reference[] {
  const groupsOf = [...readYaml(block).top.value.fields.values()]
  return groupsOf.flatMap(({ value }) =>
    (value.kind === 'map' ? [...value.fields.values()] : []).flatMap(({ value: amount }): Reference[] => {
      const start = amount.kind === 'text' ? startOf(text, amount) : undefined
      if (amount.kind !== 'text' || start === undefined) return []
      // A word alone is how much there is of something: `a little`.
      const paths = pathsWithPlaces(amount.text).filter(({ path }) => path.length > 1)
      return paths.flatMap((path) => find(path.path).flatMap((hit) => placed([hit], path, start, hit.card)))
    }),
  )
}

/** Where the text of an entry begins in the file, when it stands there as it is. */
function startOf(text: string, { place, text: value }: Entry & { kind: 'text' }): number | undefined {
  const { offset = 0, end = 0 } = place
  const raw = text.slice(offset, end)
  if (raw === value) return offset
  return raw.slice(1, -1) === value ? offset + 1 : undefined
}
