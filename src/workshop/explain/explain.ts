import type { Held, Origin } from '../../card/origins.ts'
import { ExpressionError } from '../../length/expression.ts'
import { isOnGrid, type Rounding } from '../../length/grid.ts'
import { type Length, minus, same, shorter } from '../../length/length.ts'
import { parseMeasure } from '../../length/parse.ts'
import { pathsIn } from '../../length/paths.ts'
import type { Lesson, ProvenCard } from '../../lesson/lesson.ts'
import { atMark } from '../card-measures.ts'
import { type Printed, workFor } from './exactly.ts'
import { type Follow, followsOf } from './follows.ts'
import { amountOf, formulaOf } from './formula.ts'
import { type CardNumber, numbersOf, type Values, valuesOf } from './numbers.ts'
import { type Answer, answersTo } from './slopes.ts'

/** Where a number comes from. */
export type Source =
  | ({ readonly kind: 'parameter' } & Pick<Origin, 'from' | 'text' | 'place'>)
  /** Worked out by a formula that comes to exactly it. */
  | { readonly kind: 'formula'; readonly text: string }
  /** Worked out from these, in a way that is no plain sum. */
  | { readonly kind: 'lengths'; readonly names: readonly string[] }
  /** Found by folding the card, and by standing it up. */
  | { readonly kind: 'folding' | 'standing' }

/** A number of a card, with all that there is to know of it. */
export interface Explained {
  readonly name: string
  readonly owner: string
  /** As it is printed. */
  readonly value: Length
  /** With nothing of the card rounded; missing where that is no card. */
  readonly exact?: Length
  readonly source: Source
  /**
   * How it came on the ruler from lengths that are on it: as it was, to a mark in some direction, or with what the ruler
   * leaves over of others.
   */
  readonly rounding: 'none' | Rounding | 'rest'
  /** What it changes with; empty when it is fixed, missing when that is not known. */
  readonly follows?: readonly Follow[]
}

/** Every number of a lesson's card explained. */
export function explainCard({ cards }: Pick<Lesson, 'cards'>, { card, proof }: ProvenCard): Explained[] {
  const block = cards.find(({ name }) => name === card.name)
  const thickness = proof.closed?.thickness
  if (!block || !thickness) return []
  return [...explain({ block, card, thickness }), ...standing(proof, card)]
}

/** How the card stands, which only standing it up can tell. */
function standing({ standing }: ProvenCard['proof'], { grid }: ProvenCard['card']): Explained[] {
  if (!standing) return []
  const sides = (['width', 'height', 'depth'] as const).map((side) => ({ side, x: standing[side] }))
  return sides.map(({ side, x }) => ({
    name: `standing ${side}`,
    owner: 'card',
    value: atMark(x, grid),
    source: { kind: 'standing' },
    rounding: 'nearest',
  }))
}

function explain(printed: Printed): Explained[] {
  const { card, thickness } = printed
  const exactly = workFor(printed, false)
  const onRuler = workFor(printed, true)
  const base = exactly(new Map())
  const now = new Map([...valuesOf(card)])
  if (!base) return numbersOf(card).flatMap((number) => plainly(printed, number, now))
  const parameters = [...card.origins].filter(([name]) => base.has(name))
  const lengths = heldAt(
    base,
    parameters.map(([name]) => name),
  )
  const plain = heldAt(
    base,
    parameters.flatMap(([name, origin]) => (isPlain(origin) ? [name] : [])),
  )
  const direct = answersTo(exactly, lengths, base)
  const whole = answersTo(exactly, plain, base)
  const follows = followsOf({ exactly, onRuler }, { base, printed: now, grid: card.grid }, whole)
  // What follows, with nothing rounded, from lengths that are on the ruler.
  const fromRuler = exactly(new Map([...heldAt(now, [...lengths.keys()]), ['card.thickness', thickness]]))
  const exact: Values = new Map([...base, ['card.thickness', thickness]])
  const useless = uselessIn(card, direct)
  const numbers = numbersOf(card).filter(({ name }) => !useless.has(name))
  return numbers.flatMap((number) => {
    const about = plainly(printed, number, now)
    const [key = ''] = number.keys
    return about.map((one): Explained => {
      const before = exact.get(key)
      const followed = follows.get(key)
      const known = {
        ...one,
        ...(before && { exact: before }),
        ...(followed && one.source.kind !== 'folding' && { follows: followed }),
      }
      if (one.source.kind !== 'lengths' || !before) return known
      const texts = [[direct, lengths] as const, [whole, plain] as const].flatMap(
        ([answers, held]) => agreed(number, answers, base, held, card.unit) ?? [],
      )
      const [text] = texts
      if (text === undefined) {
        const comesTo = fromRuler?.get(key)
        const rounding = comesTo ? roundingOf(one.value, comesTo, card.grid) : 'rest'
        return { ...known, source: needs(number, direct), rounding }
      }
      const comesTo = amountOf(text, now)
      return {
        ...known,
        source: { kind: 'formula', text },
        rounding: comesTo ? roundingOf(one.value, comesTo, card.grid) : 'rest',
      }
    })
  })
}

/** Lengths that the lesson does not say and that nothing of this card is worked out from, such as a seam that it has not. */
function uselessIn({ origins }: Printed['card'], direct: ReadonlyMap<string, Answer>): ReadonlySet<string> {
  const used = new Set(
    [...direct].flatMap(([key, { slopes }]) => [...slopes.keys()].filter((name) => name !== key)),
  )
  return new Set(
    [...origins].flatMap(([name, { from }]) => (from === 'usual' && !used.has(name) ? [name] : [])),
  )
}

const heldAt = (base: Values, names: readonly string[]): Held =>
  new Map(
    ['card.thickness', ...names].flatMap((name) => {
      const value = base.get(name)
      return value ? [[name, value] as const] : []
    }),
  )

/** Whether a length is given without another one. */
function isPlain({ text, from }: Origin): boolean {
  if (from === 'auto' || from === 'wished') return true
  try {
    return pathsIn(parseMeasure(text).expression).length === 0
  } catch (error) {
    if (error instanceof ExpressionError) return true
    throw error
  }
}

/** A number as far as the printed card tells. */
function plainly({ card }: Printed, { name, owner, keys }: CardNumber, now: Values): Explained[] {
  const value = now.get(keys[0] ?? '')
  if (!value) return []
  const origin = card.origins.get(name)
  if (origin) {
    const { from, text, place, exact, round } = origin
    const rounding = round === 'exact' || isOnGrid(exact, card.grid) ? 'none' : round
    return [
      { name, owner, value, source: { kind: 'parameter', from, text, ...(place && { place }) }, rounding },
    ]
  }
  if (name === 'card.thickness') return [{ name, owner, value, source: { kind: 'folding' }, rounding: 'up' }]
  return [{ name, owner, value, source: { kind: 'lengths', names: [] }, rounding: 'none' }]
}

/** The formula of a number, if all the lines that lie at its mark have the same. */
function agreed(
  { keys }: CardNumber,
  answers: ReadonlyMap<string, Answer>,
  base: Values,
  held: Held,
  unit: Printed['card']['unit'],
): string | undefined {
  const texts = keys.map((key) => {
    const [value, answer] = [base.get(key), answers.get(key)]
    return value && answer ? formulaOf(value, answer, held, unit) : undefined
  })
  return texts.every((text) => text === texts[0]) ? texts[0] : undefined
}

const needs = ({ keys }: CardNumber, answers: ReadonlyMap<string, Answer>): Source => ({
  kind: 'lengths',
  names: [...new Set(keys.flatMap((key) => [...(answers.get(key)?.slopes.keys() ?? [])]))],
})

/** How what was worked out from marks of the ruler came on it again. */
function roundingOf(value: Length, comesTo: Length, grid: Length): Explained['rounding'] {
  const off = minus(value, comesTo)
  if (off.equals(0)) return 'none'
  if (!shorter(off.abs() as Length, grid) || same(off.abs() as Length, grid)) return 'rest'
  return off.s < 0n ? 'down' : 'up'
}
