import { isMap, type Pair, type YAMLMap } from 'yaml'
import type { Edit } from '../engine.ts'
import {
  type CardBlock,
  endOf,
  isFirstInLine,
  lineStart,
  nextLine,
  pairSpan,
  spanOf,
  spotAt,
} from './card-block.ts'
import { partKeys } from './insert.ts'
import { at, isGroup, type Plain } from './plain.ts'
import { isInBrackets } from './replace.ts'

/** What goes when a key goes: the group that it was the only one of, too, where that says nothing by itself. */
export function removedWith(plain: Plain, path: readonly string[]): readonly string[] {
  const owner = path.slice(0, -1)
  const group = at(plain, owner)
  const isLast = isGroup(group) && group.size === 1
  const key = owner.at(-1) ?? ''
  const empties = key === 'base' || key === 'border' || (owner.length === 1 && partKeys.has(key))
  return isLast && empties ? removedWith(plain, owner) : path
}

/** Takes an entry out: its lines, or its place between commas. */
export function removeEntry(card: CardBlock, path: readonly string[]): Edit[] {
  const spot = spotAt(card, path)
  if (!spot?.pair || !isMap(spot.parent)) return []
  return isInBrackets(spot.parent) ? fromBrackets(card, spot.parent, spot.pair) : fromLines(card, spot.pair)
}

function fromLines(card: CardBlock, pair: Pair): Edit[] {
  const { from, to } = pairSpan(card, pair)
  if (!isFirstInLine(card.text, from)) return []
  return [{ from: lineStart(card.text, from), to: nextLine(card.text, to), insert: '' }]
}

function fromBrackets(card: CardBlock, group: YAMLMap, pair: Pair): Edit[] {
  const items = group.items as Pair[]
  const place = items.indexOf(pair)
  const { from, to } = pairSpan(card, pair)
  const next = items[place + 1]
  const before = items[place - 1]
  if (next) {
    const rest = card.text.slice(to, pairSpan(card, next).from)
    const comma = /^\s*,[ \t]*(?:\r?\n[ \t]*)?/.exec(rest)?.[0]
    return comma === undefined ? [] : [{ from, to: to + comma.length, insert: '' }]
  }
  if (before) return [{ from: pairSpan(card, before).to, to, insert: '' }]
  const inside = spanOf(card, group).from + 1
  return [{ from: inside, to: endOf(card, group) - 1, insert: '' }]
}
