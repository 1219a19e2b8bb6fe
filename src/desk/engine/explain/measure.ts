import { evaluate, type Value } from '../../../length/evaluate.ts'
import { ExpressionError } from '../../../length/expression.ts'
import type { Unit } from '../../../length/length.ts'
import { parseMeasure } from '../../../length/parse.ts'
import { formatValue } from '../../../lesson/measure.ts'
import { namesOf } from '../../../lesson/names.ts'
import type { Explained } from '../explain.ts'
import type { KeptLesson } from '../kept-lesson.ts'
import { explainedNumbers } from './kept-numbers.ts'
import { numberLines } from './number-lines.ts'

/** More lines than these are no longer read. */
const most = 4

/** What a name comes to, in both units, and where it comes from. Undefined when the lesson has no such name. */
export function explainPath(
  path: readonly string[],
  card: string | undefined,
  kept: KeptLesson,
): Omit<Explained, 'from' | 'to'> | undefined {
  const { filled } = kept
  const proven = provenFor(path, card, kept)
  if (!proven) return undefined
  const { own, its } = proven
  const value = valueIn(() => its.card.names.lookup(own, { start: 0, end: 0 }))
  if (!value) return undefined
  return { ...texts(value, filled.unit), lines: linesOf(own, value, its, kept) }
}

/** What an expression in braces comes to. */
export function explainExpression(
  text: string,
  { filled }: KeptLesson,
): Omit<Explained, 'from' | 'to'> | undefined {
  const names = namesOf(
    filled.cards.map(({ card }) => card),
    true,
  )
  const value = valueIn(() => evaluate(parseMeasure(text.replace(/[\r\n]/g, ' ')).expression, names))
  return value && { ...texts(value, filled.unit), lines: [] }
}

function texts(value: Value, unit: Unit): Pick<Explained, 'value' | 'other'> {
  const inUnit = formatValue(value, unit)
  const other = formatValue(value, unit === 'in' ? 'mm' : 'in')
  const isPlain = value.kind === 'text' || value.kind === 'number'
  return { value: inUnit, ...(!isPlain && { other }) }
}

function valueIn(ask: () => Value): Value | undefined {
  try {
    return ask()
  } catch (error) {
    if (error instanceof ExpressionError) return undefined
    throw error
  }
}

/** The card that a name is of, and the name within it. */
function provenFor(path: readonly string[], card: string | undefined, { filled }: KeptLesson) {
  const [first = '', ...rest] = path
  const has = (one: (typeof filled.cards)[number], own: readonly string[]): boolean =>
    own.length > 0 && valueIn(() => one.card.names.lookup(own, { start: 0, end: 0 })) !== undefined
  const named = filled.cards.find((one) => one.card.name === first)
  for (const own of named && card === undefined ? [rest, ['card', ...rest]] : [])
    if (named && has(named, own)) return { its: named, own }
  const its = filled.cards.find((one) => (card === undefined || one.card.name === card) && has(one, path))
  return its && { its, own: path }
}

function linesOf(
  own: readonly string[],
  value: Value,
  its: KeptLesson['filled']['cards'][number],
  { lesson }: KeptLesson,
): string[] {
  if (value.kind === 'text' || value.kind === 'number') return []
  const numbers = explainedNumbers(lesson, its)
  const name = own.join('.')
  const about = (one: string, lead: string): string[] => {
    const found = numbers.get(one)
    return found ? numberLines(found, its.card.grid).map((line) => `${lead}${line}`) : []
  }
  if (value.kind === 'length') return about(name, '').slice(0, most)
  if (value.kind === 'size') {
    const owner = own.slice(0, -1).join('.')
    return [...about(`${owner}.width`, 'Width: '), ...about(`${owner}.height`, 'Height: ')].slice(0, most)
  }
  // `base.valleys` are some of `base.scores`, which have the numbers.
  return value.value.flatMap((_, i) => about(`${name}.${i + 1}`, `${i + 1}: `).slice(0, 1)).slice(0, most)
}
