import { directiveOf } from '../../../lesson/figures/directive.ts'
import { lineBelow } from '../../../lesson/figures/edit.ts'
import { offeredFigures } from '../../../lesson/figures/offered.ts'
import { proseOf } from '../../../lesson/rules/prose.ts'
import type { Healer } from '../cures.ts'

/** The figures that steps could have, below their words. */
export const putFigures: Healer = (_, { lesson, filled }) => {
  const { text } = lesson.source
  const offered = offeredFigures(filled, proseOf({ lesson, filled }).course())
  const edits = offered.flatMap((one) => {
    const edit = lineBelow(text, one.item, directiveOf(one))
    return edit ? [{ from: edit.start, to: edit.end, insert: edit.text }] : []
  })
  if (edits.length === 0 || edits.length < offered.length) return []
  return [{ words: edits.length === 1 ? 'Put the figure in' : `Put ${edits.length} figures in`, edits }]
}
