import { type Length, minus, numberIn, type Unit } from '../../length/length.ts'
import type { Lesson, ProvenCard } from '../../lesson/lesson.ts'
import { type LengthJson, lengthJson } from '../length-json.ts'
import { explainCard } from './explain.ts'
import type { Explained } from './explained.ts'
import { shareOf } from './formula.ts'

/** A number of a card with where it comes from, for programs. */
export interface ExplainedJson {
  /** As it is asked for in braces, or plain words for what has no name. */
  readonly name: string
  readonly value: LengthJson
  /** With nothing of the card rounded; missing when there is no such card. */
  readonly exact?: LengthJson
  /** The printed number less the exact one. */
  readonly off?: { readonly mm: number; readonly in: number }
  readonly from: 'written' | 'usual' | 'auto' | 'wished' | 'formula' | 'lengths' | 'folding' | 'standing'
  /** The formula, or what is written or usual, as an expression over other names. */
  readonly formula?: string
  /** Where it is written. */
  readonly line?: number
  readonly column?: number
  /** What it is worked out from, where that is no plain sum. */
  readonly names?: readonly string[]
  readonly rounding: Explained['rounding']
  /** What it changes with, and its share of that; empty when it is fixed, missing when that is not known. */
  readonly follows?: readonly { readonly of: string; readonly share?: string }[]
}

/** The numbers of a card explained, for programs. */
export const explainedJson = (lesson: Pick<Lesson, 'cards'>, proven: ProvenCard): ExplainedJson[] =>
  explainCard(lesson, proven).map((one) => oneJson(one, proven.card.unit))

function oneJson({ name, value, exact, source, rounding, follows }: Explained, unit: Unit): ExplainedJson {
  return {
    name,
    value: lengthJson(value, unit),
    ...(exact && { exact: lengthJson(exact, unit), off: offJson(minus(value, exact)) }),
    ...sourceJson(source),
    rounding,
    ...(follows && {
      follows: follows.map(({ of, share }) => ({ of, ...(share && { share: shareOf(share) }) })),
    }),
  }
}

const offJson = (x: Length) => ({ mm: numberIn(x, 'mm'), in: numberIn(x, 'in') })

function sourceJson(source: Explained['source']): Pick<ExplainedJson, 'from' | 'formula' | 'line' | 'names'> {
  if (source.kind === 'formula') return { from: 'formula', formula: source.text }
  if (source.kind === 'lengths') return { from: 'lengths', names: source.names }
  if (source.kind !== 'parameter') return { from: source.kind }
  const { from, text, place } = source
  return { from, formula: text, ...(place && { line: place.line, column: place.column }) }
}
