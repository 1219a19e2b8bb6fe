import { attempt, checkKeys, type Reading, report } from '../card/reading.ts'
import { type Entry, type Field, readYaml, type YamlBlock } from '../card/yaml.ts'
import { evaluate, type Value } from '../length/evaluate.ts'
import { type Expression, ExpressionError } from '../length/expression.ts'
import type { Finding } from '../length/finding.ts'
import { mustCover } from '../length/grid.ts'
import { parseMeasure } from '../length/parse.ts'
import type { Amount, Supplies, Supply } from './lesson.ts'
import type { Filling } from './measure.ts'
import { formatValue } from './measure.ts'
import { readingOf } from './yaml-reading.ts'

const groups = ['each', 'shared', 'tutor'] as const

/** Reads the supplies of a lesson; lengths may be worked out from the names of its cards. */
export function readSupplies(
  block: YamlBlock | undefined,
  filling: Filling,
): { supplies: Supplies; findings: Finding[] } {
  if (!block) return { supplies: { each: [], shared: [], tutor: [] }, findings: [] }
  const { top, findings } = readYaml(block)
  const { fields } = top.value
  const reading = readingOf(findings)
  checkKeys(reading, fields, groups, 'the supplies')
  const group = (key: (typeof groups)[number]): Supply[] =>
    suppliesIn(reading, fields.get(key)?.value, filling)
  return { supplies: { each: group('each'), shared: group('shared'), tutor: group('tutor') }, findings }
}

function suppliesIn(reading: Reading, entry: Entry | undefined, filling: Filling): Supply[] {
  if (entry === undefined || entry.kind === 'empty') return []
  if (entry.kind !== 'map') {
    const cure = 'Write one item and its amount a line, such as `scissors: 1`'
    report(reading, 'value', entry.place, 'Items and their amounts are wanted here', cure)
    return []
  }
  return [...entry.fields.values()].flatMap((field) => supplyIn(reading, field, filling))
}

function supplyIn(reading: Reading, { key, keyPlace, value }: Field, filling: Filling): Supply[] {
  const cure = 'Write how many, how long, `1 per 2`, or for example `a little`'
  if (value.kind !== 'text') {
    report(reading, 'value', value.place, `It does not say how much of \`${key}\``, cure)
    return []
  }
  const amount = attempt(reading, value, (text) => amountIn(text, filling))
  return amount ? [{ item: key, amount, place: keyPlace }] : []
}

/** `5`, `1 per 3`, `500 mm`, `base.height * 4`, `a little`. Throws ExpressionError. */
export function amountIn(text: string, filling: Filling): Amount {
  const [, count, people] = /^\s*(\d{1,6})(?:\s+per\s+(\d{1,6}))?\s*$/.exec(text) ?? []
  const whole = { start: 0, end: text.length }
  if (people !== undefined && Number(people) === 0)
    throw new ExpressionError(
      'value',
      'Nothing can be shared by nobody',
      whole,
      'Write for example `1 per 2`',
    )
  if (count !== undefined && people !== undefined)
    return { kind: 'per', count: Number(count), people: Number(people) }
  if (count !== undefined) return { kind: 'count', count: Number(count) }
  const expression = expressionIn(text)
  return expression
    ? amountOf(evaluate(expression, filling.lookup), expression, filling)
    : { kind: 'text', text: text.trim() }
}

/** What is meant to be worked out; a few plain words are not. */
function expressionIn(text: string): Expression | undefined {
  try {
    const { expression } = parseMeasure(text)
    return expression.kind === 'name' && expression.path.length === 1 ? undefined : expression
  } catch (error) {
    const looksComputed = /\p{L}{2,}\.\p{L}{2,}/u.test(text)
    if (looksComputed || !(error instanceof ExpressionError)) throw error
    return undefined
  }
}

/** A length of tape or ribbon goes up to the next mark of the ruler, so that it is never too little. */
function amountOf(value: Value, at: Expression, { unit, grid }: Filling): Amount {
  if (value.kind === 'length' && value.value.gt(0))
    return { kind: 'length', length: mustCover(value.value, grid) }
  if (value.kind === 'number' && value.value.d === 1n && value.value.gte(0))
    return { kind: 'count', count: value.value.valueOf() }
  if (value.kind === 'size' || value.kind === 'text') return { kind: 'text', text: formatValue(value, unit) }
  throw new ExpressionError(
    'value',
    `${formatValue(value, unit)} is no amount`,
    at,
    'Write how many, or a length larger than nothing',
  )
}
