import { isMap, type Node, type Pair, type YAMLMap } from 'yaml'
import type { Edit } from '../engine.ts'
import {
  type CardBlock,
  isEmpty,
  isFirstInLine,
  keyOf,
  lineEnd,
  lineStart,
  pairSpan,
  spanOf,
  spotAt,
} from './card-block.ts'
import { orderOf } from './order.ts'
import type { Plain } from './plain.ts'
import { isInBrackets, replaceValue } from './replace.ts'
import { inLine, pairInLine, pairLines } from './written.ts'

/** Whether a part that is new in its group is written on lines of its own, as the lessons do. */
const onLines: ReadonlySet<string> = new Set(['layers', 'lettering', 'boxes'])

/** Writes a key that is not there yet, with the groups round it that are not there either. */
export function insertValue(card: CardBlock, path: readonly string[], value: Plain): Edit[] {
  const [key = ''] = path
  const known = path.findLastIndex((_, i) => spotAt(card, path.slice(0, i)) !== undefined || i === 0)
  const owner = path.slice(0, known)
  const spot = spotAt(card, owner)
  const node = owner.length === 0 ? card.top : spot?.node
  const own = path[known] ?? key
  const inner = nested(path.slice(known + 1), value)
  if (node && isMap(node)) return intoGroup(card, node, owner, own, inner)
  if (spot && (spot.node === null || isEmpty(spot.node)))
    return replaceValue(card, spot, new Map([[own, inner]]))
  return owner.length === 0 ? firstLine(card, own, inner) : []
}

const nested = (path: readonly string[], value: Plain): Plain =>
  path.reduceRight<Plain>((inside, key) => new Map([[key, inside]]), value)

/** A block without any key. */
function firstLine({ ending, block }: CardBlock, key: string, value: Plain): Edit[] {
  const line = pairLines(key, value, '', '  ', ending, !onLines.has(key))
  const at = block.place.offset + block.text.length
  return [{ from: at, to: at, insert: block.text === '' ? line + ending : ending + line }]
}

function intoGroup(
  card: CardBlock,
  group: YAMLMap,
  owner: readonly string[],
  key: string,
  value: Plain,
): Edit[] {
  const before = predecessor(group.items as Pair[], orderOf(owner), key)
  return isInBrackets(group)
    ? intoBrackets(card, group, before, key, value)
    : intoLines(card, group, before, owner, key, value)
}

/** The entry after which a key goes: the nearest one that usually stands before it; a name goes last. */
function predecessor(items: readonly Pair[], order: readonly string[], key: string): Pair | undefined {
  const place = order.indexOf(key)
  if (place < 0) return items.at(-1)
  const before = order.slice(0, place).findLast((other) => items.some((item) => keyOf(item) === other))
  return items.find((item) => keyOf(item) === before)
}

function intoBrackets(
  card: CardBlock,
  group: YAMLMap,
  before: Pair | undefined,
  key: string,
  value: Plain,
): Edit[] {
  const insert = pairInLine(key, value)
  const first = group.items[0] as Pair | undefined
  const { text } = card
  if (!first) {
    const at = spanOf(card, group).from + 1
    return [{ from: at, to: at, insert }]
  }
  const { from } = pairSpan(card, first)
  const gap = isFirstInLine(text, from) ? `${card.ending}${text.slice(lineStart(text, from), from)}` : ' '
  if (!before) return [{ from, to: from, insert: `${insert},${gap}` }]
  const { to } = pairSpan(card, before)
  return [{ from: to, to, insert: `,${gap}${insert}` }]
}

function intoLines(
  card: CardBlock,
  group: YAMLMap,
  before: Pair | undefined,
  owner: readonly string[],
  key: string,
  value: Plain,
): Edit[] {
  const { text, ending } = card
  const first = spanOf(card, (group.items[0] as Pair).key as Node).from
  const indent = ' '.repeat(first - lineStart(text, first))
  const lines = pairLines(key, value, indent, stepOf(card), ending, !isOnLines(group, owner, key))
  // A group of groups, such as layers with their first layer, is written out as far as its parts.
  const written = owner.length === 0 ? partLines(card, key, value, indent, ending) : lines
  if (!before && isFirstInLine(text, first)) {
    const at = lineStart(text, first)
    return [{ from: at, to: at, insert: indent + written + ending }]
  }
  const at = lineEnd(text, pairSpan(card, before ?? (group.items[0] as Pair)).to)
  return [{ from: at, to: at, insert: ending + indent + written }]
}

/** `layers:` with a layer in it: the names below each other, and their keys as is usual for their kind. */
function partLines(card: CardBlock, key: string, value: Plain, indent: string, ending: string): string {
  const step = stepOf(card)
  if (!partKeys.has(key) || !(value instanceof Map)) return `${key}: ${inLine(value, false)}`.trimEnd()
  const deeper = indent + step
  const parts = [...value].map(
    ([name, one]) => `${ending}${deeper}${pairLines(name, one, deeper, step, ending, !onLines.has(key))}`,
  )
  return `${key}:${parts.join('')}`
}

export const partKeys: ReadonlySet<string> = new Set([
  'layers',
  'spans',
  'apertures',
  'lettering',
  'pieces',
  'boxes',
])

/** A new part is written as the one before it in its group. */
function isOnLines(group: YAMLMap, owner: readonly string[], key: string): boolean {
  if (owner.length !== 1 || !partKeys.has(owner[0] ?? '')) return false
  const others = (group.items as Pair[]).filter((item) => keyOf(item) !== key && isMap(item.value))
  const last = others.at(-1)?.value as Node | undefined
  return last ? !isInBrackets(last) : onLines.has(owner[0] ?? '')
}

/** How far an inner line is set in: as the first one of the block that is. */
function stepOf(card: CardBlock): string {
  const { text, top } = card
  for (const pair of (top?.items ?? []) as Pair[]) {
    const node = pair.value
    if (!isMap(node) || node.flow || node.items.length === 0) continue
    const outer = spanOf(card, pair.key as Node).from
    const inner = spanOf(card, (node.items[0] as Pair).key as Node).from
    const by = inner - lineStart(text, inner) - (outer - lineStart(text, outer))
    if (by > 0) return ' '.repeat(by)
  }
  return '  '
}
