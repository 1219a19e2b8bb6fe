import { isMap, isScalar, isSeq, type Node, Scalar } from 'yaml'
import type { Edit } from '../engine.ts'
import {
  behindColon,
  type CardBlock,
  endOf,
  isEmpty,
  lineEnd,
  lineStart,
  type Spot,
  spanOf,
} from './card-block.ts'
import { isGroup, isList, type Plain } from './plain.ts'
import { inLine, isPlain, pairLines, quoted } from './written.ts'

/** Puts a value in the place of the one that stands there. What stood round it, notes and spaces, stays. */
export function replaceValue(card: CardBlock, spot: Spot, value: Plain): Edit[] {
  const { node, pair, parent } = spot
  const inBrackets = isInBrackets(parent)
  if (node === null || isEmpty(node)) return fillIn(card, spot, inLine(value, inBrackets))
  if (isLines(node) && pair) return replaceLines(card, spot, node, value)
  const { from } = spanOf(card, node)
  return [
    { from, to: endOf(card, node), insert: inOldMarks(node, value, inBrackets) ?? inLine(value, inBrackets) },
  ]
}

export const isInBrackets = (node: Node): boolean => (isMap(node) || isSeq(node)) && node.flow === true

/** A group or a list that is written below its key, one entry a line. */
const isLines = (node: Node): boolean => (isMap(node) || isSeq(node)) && node.flow !== true

/** A text in the quotation marks that the one before had without needing them. */
function inOldMarks(node: Node, value: Plain, inBrackets: boolean): string | undefined {
  if (!isScalar(node) || typeof value !== 'string' || !isPlain(String(node.value), inBrackets))
    return undefined
  if (node.type === Scalar.QUOTE_DOUBLE) return quoted(value, '"')
  if (node.type === Scalar.QUOTE_SINGLE) return quoted(value, "'")
  return undefined
}

/** Behind the colon of a key that has no value yet. */
function fillIn(card: CardBlock, { pair, node }: Spot, insert: string): Edit[] {
  const key = pair?.key as Node | undefined
  if (!key) return node ? [{ ...spanOf(card, node), insert }] : []
  const keyTo = spanOf(card, key).to
  const at = behindColon(card, keyTo)
  return at === undefined
    ? [{ from: keyTo, to: keyTo, insert: `: ${insert}` }]
    : [{ from: at, to: at, insert: ` ${insert}` }]
}

/** Lines below a key become a value behind it, or other lines. */
function replaceLines(card: CardBlock, spot: Spot, node: Node, value: Plain): Edit[] {
  const { text } = card
  const key = spot.pair?.key as Node
  const colon = behindColon(card, spanOf(card, key).to)
  const first = spanOf(card, node).from
  const to = lineEnd(text, endOf(card, node))
  if (colon === undefined || lineStart(text, first) <= colon) return []
  const start = lineStart(text, first)
  const indent = text.slice(start, first)
  const { ending } = card
  if (isList(value) && value.length > 1 && isSeq(node)) {
    const lines = value.map((item) => `${indent}- ${inLine(item, false)}`)
    return [{ from: start, to, insert: lines.join(ending) }]
  }
  if (isGroup(value)) {
    const lines = [...value].map(([own, one]) => indent + pairLines(own, one, indent, '', ending, true))
    return [{ from: start, to, insert: lines.join(ending) }]
  }
  return [
    { from: colon, to: colon, insert: ` ${inLine(value, false)}` },
    { from: start - (text[start - 2] === '\r' ? 2 : 1), to, insert: '' },
  ]
}
