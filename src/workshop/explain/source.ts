import type { Card } from '../../card/card.ts'
import type { Held } from '../../card/origins.ts'
import { type Length, minus, shorter } from '../../length/length.ts'
import type { Explained } from './explained.ts'
import { amountOf, formulaOf } from './formula.ts'
import type { Given } from './given.ts'
import type { CardNumber, Values } from './numbers.ts'
import type { Answer } from './slopes.ts'

/** What was found out about the lengths of a card. */
export interface Inquiry {
  readonly card: Pick<Card, 'unit' | 'grid'>
  readonly given: Given
  /** With nothing rounded. */
  readonly base: Values
  /** As printed. */
  readonly printed: Values
  /** With nothing rounded but the lengths that all is worked out from; missing when that is no card. */
  readonly fromRuler: Values | undefined
  /** How the numbers answer to each of the lengths while the others stay. */
  readonly direct: ReadonlyMap<string, Answer>
  /** How they answer to the plainly given ones, the others following. */
  readonly whole: ReadonlyMap<string, Answer>
}

/**
 * A number that is read off the card: its formula over the lengths or, where that has a kink just there, over those that
 * are given plainly; else what changes it.
 */
export function sourceOf(
  number: CardNumber,
  value: Length,
  inquiry: Inquiry,
): Pick<Explained, 'source' | 'rounding'> {
  const { card, given, base, printed, fromRuler, direct, whole } = inquiry
  const text =
    agreed(number, direct, base, given.all, card.unit) ?? agreed(number, whole, base, given.plain, card.unit)
  const comesTo = text === undefined ? fromRuler?.get(number.keys[0] ?? '') : amountOf(text, printed)
  const rounding = comesTo ? roundingOf(value, comesTo, card.grid) : 'rest'
  const names = new Set(number.keys.flatMap((key) => [...(direct.get(key)?.slopes.keys() ?? [])]))
  return text === undefined
    ? { source: { kind: 'lengths', names: [...names] }, rounding }
    : { source: { kind: 'formula', text }, rounding }
}

/** The formula of a number, if all the lines that lie at its mark have the same. */
function agreed(
  { keys }: CardNumber,
  answers: ReadonlyMap<string, Answer>,
  base: Values,
  held: Held,
  unit: Card['unit'],
): string | undefined {
  const texts = keys.map((key) => {
    const [value, answer] = [base.get(key), answers.get(key)]
    return value && answer ? formulaOf(value, answer, held, unit) : undefined
  })
  return texts.every((text) => text === texts[0]) ? texts[0] : undefined
}

/** How what was worked out from marks of the ruler came on it again. */
function roundingOf(value: Length, comesTo: Length, grid: Length): Explained['rounding'] {
  const off = minus(value, comesTo)
  if (off.equals(0)) return 'none'
  if (!shorter(off.abs() as Length, grid)) return 'rest'
  return off.s < 0n ? 'down' : 'up'
}
