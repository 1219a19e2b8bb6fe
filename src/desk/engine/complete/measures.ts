import type { Completion } from '../complete.ts'
import type { NamedValue } from './names.ts'

/** Behind a sign, a bracket or the beginning: the name that is being written. Names may have spaces. */
const last = /(?:^|[+*/(),×{]|\s-(?=\s)|(?<=[\d\s])x(?=\s))\s*([^+*/(),×{}]*)$/u

/**
 * The names that may stand in an expression.
 *
 * @param word the expression up to the cursor.
 */
export function measureCompletions(word: string, at: number, names: readonly NamedValue[]): Completion[] {
  const typed = last.exec(word)?.[1] ?? ''
  // A number is being written, and no name.
  if (/^[\d.¼½¾]/u.test(typed)) return []
  return names.map(
    ({ path, value }): Completion => ({
      insert: path,
      from: at - typed.length,
      label: path,
      ...(value !== undefined && { detail: value }),
      kind: 'measure',
    }),
  )
}
