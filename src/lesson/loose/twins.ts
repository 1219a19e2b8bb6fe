import { usualGrid } from '../../length/grid.ts'
import { minus } from '../../length/length.ts'
import { type Literal, systemOf } from './literal.ts'

/** Whether `b` says what `a` says in the other unit, right behind it: `6 in (15.2 cm)`. */
export function isTwin(a: Literal, b: Literal, words: string): boolean {
  if (systemOf(a) === systemOf(b) || a.lengths.length !== b.lengths.length) return false
  if (!/^,? ?[(/=[] ?(?:about |or |= ?)?$/.test(words.slice(a.end, b.start))) return false
  return a.lengths.every((length, i) => {
    const other = b.lengths[i]
    return other !== undefined && minus(length, other).abs().lte(usualGrid.in)
  })
}
