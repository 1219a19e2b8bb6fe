import { evaluate } from '../length/evaluate.ts'
import { ExpressionError } from '../length/expression.ts'
import { onGrid, type Rounding } from '../length/grid.ts'
import type { Size } from '../length/length.ts'
import { sheetSize } from '../length/paper.ts'
import { parseMeasure } from '../length/parse.ts'
import { attempt, notTooLong, type Reading, textOf } from './reading.ts'
import type { Cell } from './scope.ts'
import type { Entry } from './yaml.ts'

/** A size of the card block, width first, put on the ruler grid in the named direction. */
export function sizeCell(
  reading: Reading,
  name: string,
  entry: Entry | undefined,
  round: Rounding,
): Cell<Size> {
  const grid = (size: Size): Size => ({
    width: onGrid(size.width, reading.grid, round),
    height: onGrid(size.height, reading.grid, round),
  })
  return reading.scope.cell(name, () => {
    const text =
      entry && textOf(reading, entry, `\`${name}\` wants a size`, 'Write a size such as `7 x 5 in`')
    const size = text && attempt(reading, text, (t) => sheetSize(t) ?? sizeIn(t, reading))
    return size && grid(size)
  })
}

function sizeIn(text: string, reading: Reading): Size {
  const { expression } = parseMeasure(text)
  const value = evaluate(expression, reading.scope.lookup)
  if (value.kind === 'size')
    return {
      width: notTooLong(value.value.width, expression),
      height: notTooLong(value.value.height, expression),
    }
  throw new ExpressionError(
    'size',
    `\`${text.trim()}\` is not a size, expected width × height`,
    expression,
    'Write a size such as `7 x 5 in`, or a standard one such as `A6 landscape`',
  )
}
