import { evaluate, evaluateLength } from './evaluate.ts'
import { ExpressionError } from './expression.ts'
import type { Length, Size } from './length.ts'
import { sheetNames, sheetSize } from './paper.ts'
import { parseMeasure } from './parse.ts'

/** Reads a length such as `5 7/8 in`. Throws ExpressionError. */
export const readLength = (text: string): Length => evaluateLength(parseMeasure(text).expression)

/** Reads a size such as `8 x 6 in` or `A6 landscape`, width first. Throws ExpressionError. */
export function readSize(text: string): Size {
  const named = sheetSize(text)
  if (named) return named
  const { expression } = parseMeasure(text)
  if (expression.kind === 'name')
    throw new ExpressionError(
      'unknown-size',
      `Unexpected size \`${text.trim()}\`, expected width × height or the name of a standard sheet`,
      expression,
      `Write a size such as \`7 x 5 in\`, or one of ${sheetNames.join(', ')}`,
    )
  const value = evaluate(expression)
  if (value.kind === 'size') return value.value
  throw new ExpressionError(
    'size',
    `\`${text.trim()}\` is not a size, expected width × height`,
    expression,
    'Write a size such as `7 x 5 in` or `180 x 120 mm`',
  )
}
