import type { Held, Origin, Origins } from '../../card/origins.ts'
import { ExpressionError } from '../../length/expression.ts'
import { sheetSize } from '../../length/paper.ts'
import { parseMeasure } from '../../length/parse.ts'
import { pathsIn } from '../../length/paths.ts'
import type { Values } from './numbers.ts'
import type { Answer } from './slopes.ts'

/** What the numbers of a card are worked out from: its lengths with their values. */
export interface Given {
  /** All of them. */
  readonly all: Held
  /** Those that are given without another one: the others follow from them. */
  readonly plain: Held
}

/** The lengths that a card is worked out from, as they are in these values. */
export function givenIn(origins: Origins, values: Values): Given {
  const names = [...origins.keys()]
  const isGivenPlainly = (name: string): boolean => {
    const origin = origins.get(name)
    return origin !== undefined && isPlain(origin)
  }
  return { all: heldAt(values, names), plain: heldAt(values, names.filter(isGivenPlainly)) }
}

/** These lengths and the thickness, as they are in these values. */
export const heldAt = (values: Values, names: readonly string[]): Held =>
  new Map(
    ['card.thickness', ...names].flatMap((name) => {
      const value = values.get(name)
      return value ? [[name, value] as const] : []
    }),
  )

/** Whether a length is given without another one. */
function isPlain({ text, from }: Origin): boolean {
  if (from === 'auto' || from === 'wished' || sheetSize(text)) return true
  try {
    return pathsIn(parseMeasure(text).expression).length === 0
  } catch (error) {
    if (error instanceof ExpressionError) return true
    throw error
  }
}

/** Lengths that the lesson does not say and that nothing of this card is worked out from, such as a seam that it has not. */
export function uselessIn(origins: Origins, direct: ReadonlyMap<string, Answer>): ReadonlySet<string> {
  const used = new Set(
    [...direct].flatMap(([key, { slopes }]) => [...slopes.keys()].filter((name) => name !== key)),
  )
  return new Set(
    [...origins].flatMap(([name, { from }]) => (from === 'usual' && !used.has(name) ? [name] : [])),
  )
}
