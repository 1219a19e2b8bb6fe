import { readArea } from '../length/area.ts'
import { type Extent, evaluateExtent } from '../length/evaluate-area.ts'
import { type Expression, ExpressionError } from '../length/expression.ts'
import { mustCover } from '../length/grid.ts'
import { parseMeasure } from '../length/parse.ts'
import { readCounted } from './count-text.ts'
import { readDose } from './dose.ts'
import type { Amount } from './lesson.ts'
import { type Filling, valueText } from './measure.ts'

/**
 * Reads how much of a supply is wanted: `5`, `3 drops`, `1 per 3`, `1 per table`, `500 mm`, `base.height * 4`,
 * `base.width * base.height`, `40 cm²`, `5 g`, `2 ml`, `a little`.
 *
 * @throws ExpressionError with the part that cannot be worked out.
 */
export function amountIn(text: string, filling: Filling): Amount {
  const fixed = fixedIn(text)
  if (fixed) return fixed
  const expression = expressionIn(text)
  return expression
    ? amountOf(evaluateExtent(expression, filling.lookup), expression, filling)
    : { kind: 'text', text: text.trim() }
}

/** An amount that no name changes. */
function fixedIn(text: string): Amount | undefined {
  const [, count, people, table] = /^\s*(\d{1,6})(?:\s+per\s+(?:(\d{1,6})|(table)))?\s*$/.exec(text) ?? []
  if (people !== undefined && Number(people) === 0)
    throw new ExpressionError(
      'value',
      'Nothing can be shared by nobody',
      { start: 0, end: text.length },
      'Write for example `1 per 2`',
    )
  if (count !== undefined && people !== undefined)
    return { kind: 'per', count: Number(count), people: Number(people) }
  if (count !== undefined && table !== undefined) return { kind: 'per table', count: Number(count) }
  if (count !== undefined) return { kind: 'count', count: Number(count) }
  const counted = readCounted(text)
  if (counted) return { kind: 'count', ...counted }
  const dose = readDose(text)
  if (dose?.amount.gt(0)) return { kind: 'dose', dose }
  const area = readArea(text)
  return area?.gt(0) ? { kind: 'area', area } : undefined
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
function amountOf(value: Extent, at: Expression, { wording, grid }: Filling): Amount {
  if (value.kind === 'area' && value.value.gt(0)) return { kind: 'area', area: value.value }
  if (value.kind === 'length' && value.value.gt(0))
    return { kind: 'length', length: mustCover(value.value, grid) }
  if (value.kind === 'number' && value.value.d === 1n && value.value.gte(0))
    return { kind: 'count', count: value.value.valueOf() }
  if (value.kind === 'size' || value.kind === 'text') return { kind: 'text', text: valueText(value, wording) }
  throw new ExpressionError(
    'value',
    value.kind === 'area' ? 'This is no area of anything' : `${valueText(value, wording)} is no amount`,
    at,
    'Write how many, or a length or an area larger than nothing',
  )
}
