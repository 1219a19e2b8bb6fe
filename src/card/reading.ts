import { evaluateLength } from '../length/evaluate.ts'
import { ExpressionError } from '../length/expression.ts'
import { type Finding, type Place, type Severity, suggestWord } from '../length/finding.ts'
import { formatLength } from '../length/format.ts'
import { onGrid, type Rounding } from '../length/grid.ts'
import type { Length, Size, Unit } from '../length/length.ts'
import { parseMeasure } from '../length/parse.ts'
import { readSize } from '../length/text.ts'
import type { Wording } from '../wording/wording.ts'
import { findingAt } from './at.ts'
import type { Held, Origin } from './origins.ts'
import { BrokenName, type Cell, type Scope } from './scope.ts'
import type { Shape } from './shape.ts'
import type { Entry, Fields } from './yaml.ts'

/** What all readers of a card block share: its names, where findings go, and the unit and ruler of this print. */
export interface Reading {
  readonly scope: Scope
  readonly findings: Finding[]
  readonly unit: Unit
  readonly grid: Length
  /** How texts speak that a lesson can ask for, such as the name of a stock. */
  readonly wording: Wording
  readonly places: Map<string, Place>
  /** Where each named length comes from, filled as they are worked out. */
  readonly origins?: Map<string, Origin>
  readonly held?: Held
  /** Which way the shut card stands; missing when that is not said plainly. */
  readonly shape?: Shape
}

type Text = Entry & { kind: 'text' }

export const say = (reading: Reading, x: Length): string => formatLength(x, reading.unit)

export function report(
  reading: Pick<Reading, 'findings'>,
  rule: string,
  place: Place,
  message: string,
  suggestion: string,
  severity: Severity = 'error',
): void {
  reading.findings.push({ rule, severity, message, suggestion, place })
}

/** Runs a reader of one entry; a mistake in its expression becomes a finding at its place, and the answer undefined. */
export function attempt<T>(reading: Reading, entry: Text, read: (text: string) => T): T | undefined {
  try {
    return read(entry.text)
  } catch (error) {
    if (!(error instanceof ExpressionError)) throw error
    if (!(error instanceof BrokenName)) reading.findings.push(findingAt(error, entry))
    return undefined
  }
}

/** Runs something that may need a broken name; the mistake itself has been reported where it is. */
export function unlessBroken<T>(compute: () => T): T | undefined {
  try {
    return compute()
  } catch (error) {
    if (error instanceof BrokenName) return undefined
    throw error
  }
}

/** Nothing of a card is longer than this, in mm: whoever writes more has slipped. */
const longest = 10_000

export const isTooLong = (x: Length): boolean => x.abs().gt(longest)

/** The length, unless it is longer than a card could be. Throws ExpressionError. */
export function notTooLong(x: Length, at: { readonly start: number; readonly end: number }): Length {
  if (!isTooLong(x)) return x
  throw new ExpressionError('too-long', 'No part of a card is that long', at, 'Give a length of at most 10 m')
}

/** Reads a size that a card could have, such as `7 x 5 in`. Throws ExpressionError. */
export function readCardSize(text: string): Size {
  const size = readSize(text)
  const at = { start: 0, end: text.length }
  return { width: notTooLong(size.width, at), height: notTooLong(size.height, at) }
}

function length(reading: Reading, text: string): Length {
  const { expression } = parseMeasure(text)
  return notTooLong(evaluateLength(expression, reading.scope.lookup), expression)
}

/**
 * A length of the card block under a name of its own, put on the ruler grid in the named direction.
 *
 * @param entry as written; absent when the lesson does not say, and then `usual` counts.
 */
export function lengthCell(
  reading: Reading,
  name: string,
  entry: Entry | undefined,
  usual: string,
  round: Rounding | 'exact',
): Cell<Length> {
  const cell = reading.scope.cell(name, () => {
    const computed = entry ? writtenLength(reading, entry, name) : length(reading, usual)
    if (computed === undefined) return undefined
    const exact = reading.held?.get(name) ?? computed
    reading.origins?.set(name, { ...sourceOf(entry, usual), exact, round })
    return round === 'exact' ? exact : onGrid(exact, reading.grid, round)
  })
  reading.scope.define(name, () => ({ kind: 'length', value: cell() }))
  return cell
}

const sourceOf = (entry: Entry | undefined, usual: string): Pick<Origin, 'from' | 'text' | 'place'> =>
  entry?.kind === 'text'
    ? { from: 'written', text: entry.text.trim(), place: entry.place }
    : { from: 'usual', text: usual }

function writtenLength(reading: Reading, entry: Entry, name: string): Length | undefined {
  const text = textOf(
    reading,
    entry,
    `\`${name}\` wants a length`,
    'Write a length such as `3/4 in` or `20 mm`',
  )
  return text && attempt(reading, text, (t) => length(reading, t))
}

/** The entry if it is text; otherwise a finding. */
export function textOf(reading: Reading, entry: Entry, wanted: string, cure: string): Text | undefined {
  if (entry.kind === 'text') return entry
  report(reading, 'value', entry.place, `${wanted}, but there is ${described(entry)} here`, cure)
  return undefined
}

/** The fields of an entry if it is a mapping; otherwise a finding, and none. */
export function fieldsOf(reading: Reading, entry: Entry | undefined, wanted: string, cure: string): Fields {
  if (entry === undefined || entry.kind === 'empty') return new Map()
  if (entry.kind === 'map') return entry.fields
  report(reading, 'value', entry.place, `${wanted}, but there is ${described(entry)} here`, cure)
  return new Map()
}

/** A finding for every key that nobody asked for, with the nearest one that is known. */
export function checkKeys(reading: Reading, fields: Fields, known: readonly string[], owner: string): void {
  for (const { key, keyPlace } of fields.values())
    if (!known.includes(key))
      report(
        reading,
        'unknown-key',
        keyPlace,
        `Unexpected key \`${key}\` in ${owner}`,
        suggestWord(key, known),
      )
}

/** One of a few words; otherwise a finding, and the first of them. */
export function wordOf<W extends string>(
  reading: Reading,
  entry: Entry | undefined,
  words: readonly [W, ...W[]],
): W {
  if (entry === undefined || entry.kind === 'empty') return words[0]
  if (entry.kind === 'text' && (words as readonly string[]).includes(entry.text)) return entry.text as W
  const found = entry.kind === 'text' ? `\`${entry.text}\`` : described(entry)
  report(
    reading,
    'value',
    entry.place,
    `Unexpected ${found}`,
    suggestWord(entry.kind === 'text' ? entry.text : '', words),
  )
  return words[0]
}

const described = (entry: Entry): string =>
  ({ text: 'a text', list: 'a list', map: 'a group of keys', empty: 'nothing' })[entry.kind]
