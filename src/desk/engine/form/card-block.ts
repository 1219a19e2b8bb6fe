import {
  isAlias,
  isMap,
  isScalar,
  isSeq,
  type Node,
  type Pair,
  parseDocument,
  Scalar,
  type YAMLMap,
} from 'yaml'
import { readYaml, type YamlBlock } from '../../../card/yaml.ts'
import type { Finding } from '../../../length/finding.ts'
import { lineEnding } from '../../../lesson/edits.ts'
import type { Lesson } from '../../../lesson/lesson.ts'
import { type Plain, plainOf } from './plain.ts'

/** A card block of a lesson, opened for changes. All offsets are of the lesson's text. */
export interface CardBlock {
  /** The whole lesson, where every line ends with LF or CRLF. */
  readonly text: string
  /** How its lines end. */
  readonly ending: string
  readonly block: YamlBlock
  /** Undefined for a block without any key. */
  readonly top: YAMLMap | undefined
  /** What it says, without its places. */
  readonly plain: Plain
  /** Why it cannot be read; empty when it can. */
  readonly broken: readonly Finding[]
}

/** The first card block of that name. */
export function openCard(lesson: Lesson, card: string): CardBlock | undefined {
  const block = lesson.cards.find(({ name }) => name === card)
  return block && openBlock(lesson.source.text, block)
}

export function openBlock(text: string, block: YamlBlock): CardBlock {
  const { top, findings } = readYaml(block)
  const { contents } = parseDocument(block.text, { version: '1.2', schema: 'failsafe', merge: false })
  return {
    text: text.replace(/\r(?!\n)/g, '\n'),
    ending: lineEnding(text),
    block,
    top: isMap(contents) ? contents : undefined,
    plain: plainOf(top.value),
    broken: findings,
  }
}

/** Where a key or an item of a list stands. `pair` is missing for an item. */
export interface Spot {
  readonly pair?: Pair
  readonly node: Node | null
  readonly parent: Node
}

/** What a path leads to; undefined when it is not written, or when it is written elsewhere and only repeated there. */
export function spotAt({ top }: Pick<CardBlock, 'top'>, path: readonly string[]): Spot | undefined {
  let spot: Spot | undefined
  let node: Node | null | undefined = top
  for (const key of path) {
    if (!node || isAlias(node)) return undefined
    spot = within(node, key)
    if (!spot) return undefined
    node = spot.node
  }
  return spot
}

function within(parent: Node, key: string): Spot | undefined {
  if (isMap(parent)) {
    const pair = parent.items.find((item) => keyOf(item) === key)
    return pair && { pair, node: (pair.value ?? null) as Node | null, parent }
  }
  const item = isSeq(parent) && /^\d+$/.test(key) ? parent.items[Number(key)] : undefined
  return item ? { node: item as Node, parent } : undefined
}

/** The key as `readYaml` reads it. */
export const keyOf = ({ key }: Pair): string => (isScalar(key) ? String(key.value ?? '').trim() : '')

/** Nothing is written behind the colon. */
export const isEmpty = (node: Node | null): boolean =>
  node === null || (isScalar(node) && node.type === Scalar.PLAIN && (node.source ?? '') === '')

/** Offsets of a node in the lesson; its end is behind its last character that is no space. */
export function spanOf(card: CardBlock, node: Node): { from: number; to: number } {
  const base = card.block.place.offset
  const [start = 0, end = 0] = node.range ?? []
  return { from: base + start, to: trimmed(card.text, base + start, base + end) }
}

function trimmed(text: string, from: number, to: number): number {
  let end = to
  while (end > from && /\s/.test(text[end - 1] ?? '')) end--
  return end
}

/** From the first character of a key to the last of what belongs to it. */
export function pairSpan(card: CardBlock, pair: Pair): { from: number; to: number; keyTo: number } {
  const key = spanOf(card, pair.key as Node)
  return { from: key.from, keyTo: key.to, to: pairEnd(card, pair, key.to) }
}

function pairEnd(card: CardBlock, pair: Pair, keyTo: number): number {
  const value = (pair.value ?? null) as Node | null
  if (value === null || isEmpty(value)) return behindColon(card, keyTo) ?? keyTo
  return endOf(card, value)
}

/** Behind the colon of a key; undefined for a key without one. */
export function behindColon({ text }: CardBlock, keyTo: number): number | undefined {
  const colon = /^[ \t]*:/.exec(text.slice(keyTo, keyTo + 200))
  return colon ? keyTo + colon[0].length : undefined
}

/** Behind the last character of a node: what is below it in the lines ends with its own last entry. */
export function endOf(card: CardBlock, node: Node): number {
  if ((isMap(node) || isSeq(node)) && !node.flow) {
    const last = node.items.at(-1)
    if (isMap(node) && last) return pairEnd(card, last as Pair, spanOf(card, (last as Pair).key as Node).to)
    if (last && !isEmpty(last as Node)) return endOf(card, last as Node)
  }
  return spanOf(card, node).to
}

/** Offset of the first character of the line. */
export const lineStart = (text: string, at: number): number => text.lastIndexOf('\n', at - 1) + 1

/** Offset behind the last character of the line, before its ending. */
export function lineEnd(text: string, at: number): number {
  const end = text.slice(at).search(/\r?\n/)
  return end < 0 ? text.length : at + end
}

/** Offset of the first character of the next line. */
export function nextLine(text: string, at: number): number {
  const end = text.indexOf('\n', at)
  return end < 0 ? text.length : end + 1
}

/** Whether nothing but spaces stands before it in its line. */
export const isFirstInLine = (text: string, at: number): boolean =>
  /^[ \t]*$/.test(text.slice(lineStart(text, at), at))
