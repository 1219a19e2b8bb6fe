import Fraction from 'fraction.js'
import type { Held } from '../../card/origins.ts'
import { type Length, minus, mm, plus, same, times, zero } from '../../length/length.ts'
import type { Work } from './exactly.ts'
import type { Values } from './numbers.ts'

/** How a number answers to the lengths that it may be worked out from. */
export interface Answer {
  /** How much it grows with each that changes it; one for which that depends on the direction has none. */
  readonly slopes: ReadonlyMap<string, Fraction | undefined>
  /** Whether it is the sum of these shares, and of nothing else. */
  readonly isSum: boolean
}

/** A step that no ruler shows, and that halves, thirds and so on leave exact. */
const step: Length = mm(new Fraction(1, 100))

/**
 * Asks of every number how it answers to each of the given lengths, a step up and a step down. A length at nothing, or
 * at the most that there is room for, is asked one way only.
 *
 * @param work works the card out with some of them given.
 * @param lengths as they are.
 * @param base what the card comes to with them.
 */
export function answersTo(work: Work, lengths: Held, base: Values): ReadonlyMap<string, Answer> {
  const asked = asksOf(work, lengths)
  const together = allAtOnce(work, lengths, asked)
  return new Map(
    [...base].map(([key, value]) => {
      const slopes = new Map<string, Fraction | undefined>()
      for (const { name, ups } of asked) {
        const found = ups.flatMap(({ by, values }) => {
          const now = values.get(key)
          return now ? [minus(now, value).div(by)] : [undefined]
        })
        const [first] = found
        const isSmooth = first !== undefined && found.every((slope) => slope?.equals(first))
        if (!isSmooth) slopes.set(name, undefined)
        else if (!first.equals(0)) slopes.set(name, first)
      }
      const expected = (shift: Held): Length =>
        plus(value, ...[...slopes].map(([name, slope]) => times(shift.get(name) ?? zero, slope ?? 0)))
      const isSum =
        together !== undefined &&
        [...slopes.values()].every((slope) => slope !== undefined) &&
        same(expected(together.shift), together.values.get(key) ?? zero)
      return [key, { slopes, isSum }]
    }),
  )
}

/** One length, or two that can only change together, a step up and a step down. */
interface Asked {
  readonly name: string
  readonly ups: readonly { readonly by: Length; readonly values: Values }[]
  readonly shift: (by: Length) => Held
}

function asksOf(work: Work, lengths: Held): Asked[] {
  const ask = (name: string, along: readonly string[]): Asked => {
    const shift = (by: Length): Held =>
      new Map(along.flatMap((one) => (lengths.has(one) ? [[one, plus(lengths.get(one) ?? zero, by)]] : [])))
    const ways = [step, ...(lengths.get(name)?.equals(0) ? [] : [times(step, -1)])]
    const ups = ways.flatMap((by) => {
      const values = work(new Map([...lengths, ...shift(by)]))
      return values ? [{ by, values }] : []
    })
    return { name, ups, shift }
  }
  const [width, height] = [ask('closed.width', ['closed.width']), ask('closed.height', ['closed.height'])]
  // A fold that is square whatever is written can only be asked for both.
  const isSquare = width.ups.length === 0 && height.ups.length === 0
  const sides = isSquare ? [ask('closed.width', ['closed.width', 'closed.height'])] : [width, height]
  const others = [...lengths.keys()].filter((name) => !name.startsWith('closed.'))
  return [...sides, ...others.map((name) => ask(name, [name]))]
}

/** The card with all lengths changed at once, each by another amount: a product of two of them does not pass for a sum. */
function allAtOnce(
  work: Work,
  lengths: Held,
  asked: readonly Asked[],
): { shift: Held; values: Values } | undefined {
  for (const sign of [1, -1]) {
    const changes = asked.flatMap(({ name, ups, shift }, i) => {
      const ways = ups.map(({ by }) => by)
      const way = ways.length > 1 ? times(step, i % 2 === 0 ? sign : -sign) : ways[0]
      return way ? [{ name, by: times(way, new Fraction(1 + (i % 7), 8)), shift }] : []
    })
    const values = work(new Map([...lengths, ...changes.flatMap(({ by, shift }) => [...shift(by)])]))
    if (values) return { shift: new Map(changes.map(({ name, by }) => [name, by])), values }
  }
  return undefined
}
