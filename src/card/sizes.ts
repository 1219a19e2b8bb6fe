import { evaluate } from '../length/evaluate.ts'
import { type Expression, ExpressionError } from '../length/expression.ts'
import { onGrid, type Rounding } from '../length/grid.ts'
import type { Length, Size } from '../length/length.ts'
import { sheetSize } from '../length/paper.ts'
import { parseMeasure } from '../length/parse.ts'
import type { Origin } from './origins.ts'
import { attempt, notTooLong, type Reading, textOf } from './reading.ts'
import type { Cell } from './scope.ts'
import type { Entry } from './yaml.ts'

type Side = keyof Size

/** A size as it was worked out, and the part of the text that each side comes from. */
interface WrittenSize extends Size {
  readonly texts: Readonly<Record<Side, string>>
}

/**
 * A size of the card block, width first, put on the ruler grid in the named direction.
 *
 * @param name of the size; its two sides are `OWNER.width` and `OWNER.height`.
 */
export function sizeCell(
  reading: Reading,
  name: string,
  entry: Entry | undefined,
  round: Rounding,
): Cell<Size> {
  const owner = name.replace(/\.size$/, '')
  return reading.scope.cell(name, () => {
    const text =
      entry && textOf(reading, entry, `\`${name}\` wants a size`, 'Write a size such as `7 x 5 in`')
    const size = text && attempt(reading, text, (t) => namedSize(t) ?? sizeIn(t, reading))
    if (!size) return undefined
    const side = (key: Side): Length =>
      sideOnGrid(reading, `${owner}.${key}`, size[key], round, {
        from: 'written',
        text: size.texts[key],
        place: text.place,
      })
    return { width: side('width'), height: side('height') }
  })
}

/** One side of a size, put on the ruler grid, with where it comes from. */
export function sideOnGrid(
  reading: Reading,
  name: string,
  side: Length,
  round: Rounding,
  source: Pick<Origin, 'from' | 'text' | 'place'>,
): Length {
  const exact = reading.held?.get(name) ?? side
  reading.origins?.set(name, { ...source, exact, round })
  return onGrid(exact, reading.grid, round)
}

function namedSize(text: string): WrittenSize | undefined {
  const size = sheetSize(text)
  const name = text.trim()
  return size && { ...size, texts: { width: name, height: name } }
}

function sizeIn(text: string, reading: Reading): WrittenSize {
  const { expression } = parseMeasure(text)
  const value = evaluate(expression, reading.scope.lookup)
  if (value.kind === 'size')
    return {
      width: notTooLong(value.value.width, expression),
      height: notTooLong(value.value.height, expression),
      texts: textsOf(text, expression),
    }
  throw new ExpressionError(
    'size',
    `\`${text.trim()}\` is not a size, expected width × height`,
    expression,
    'Write a size such as `7 x 5 in`, or a standard one such as `A6 landscape`',
  )
}

/** The two sides as they are written. In `8 x 6 in` the unit of the width stands behind the height. */
function textsOf(text: string, expression: Expression): WrittenSize['texts'] {
  // `(7 x 5 in)` and the size of another piece stand for both at once.
  if (expression.kind !== 'size') {
    const whole = text.trim()
    const named = /^(.*)\.size$/.exec(whole)?.[1]
    return named ? { width: `${named}.width`, height: `${named}.height` } : { width: whole, height: whole }
  }
  const { width, height } = expression
  const written = ({ start, end }: Expression): string => text.slice(start, end)
  const unit = width.kind === 'number' && height.kind === 'length' ? ` ${height.unit}` : ''
  return { width: `${written(width)}${unit}`, height: written(height) }
}
