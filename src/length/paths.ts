import type { Expression } from './expression.ts'

/** The names that an expression is worked out from, in the order in which they stand, such as `['backdrop', 'width']`. */
export function pathsIn(expression: Expression): (readonly string[])[] {
  switch (expression.kind) {
    case 'name':
      return [expression.path]
    case 'negative':
      return pathsIn(expression.of)
    case 'binary':
      return [...pathsIn(expression.left), ...pathsIn(expression.right)]
    case 'size':
      return [...pathsIn(expression.width), ...pathsIn(expression.height)]
    default:
      return []
  }
}
