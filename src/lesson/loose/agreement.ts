import { usualGrid } from '../../length/grid.ts'
import { type Length, minus, part, smaller, times } from '../../length/length.ts'
import type { Candidate } from './candidates.ts'
import { type Literal, systemOf } from './literal.ts'

/** How a literal and a name go together: to the last digit, as near as a hand reads a ruler, or in whole centimetres. */
export type Agreement = 'exact' | 'rounded' | 'coarse'

/**
 * Whether a literal may mean a name by its value. As near as a hand writes it down is half a mark of the ruler that the
 * literal is read off, and half of the last place that it gives: `14.9 cm` may mean 5 7/8 in. Numbers without a fraction
 * may be a whole mark off.
 */
export function agreement(literal: Literal, { kind, lengths }: Candidate): Agreement | undefined {
  const wanted = literal.kind === 'sheet' ? 'size' : literal.kind
  if (wanted === 'length' && kind === 'list' && lengths.length !== 1) return undefined
  if (wanted !== 'length' && wanted !== kind) return undefined
  if (wanted === 'length' && kind === 'size') return undefined
  if (lengths.length !== literal.lengths.length) return undefined
  const grades = literal.lengths.map((length, i) =>
    agreementOf(length, lengths[i], literal, literal.steps[i]),
  )
  if (grades.includes(undefined)) return undefined
  if (grades.includes('coarse')) return 'coarse'
  return grades.includes('rounded') ? 'rounded' : 'exact'
}

function agreementOf(
  a: Length,
  b: Length | undefined,
  literal: Literal,
  step?: Length,
): Agreement | undefined {
  if (!b) return undefined
  if (a.equals(b)) return 'exact'
  const mark = usualGrid[systemOf(literal)]
  const miss = minus(a, b).abs()
  if (miss.lte(part(step ? smaller(step, mark) : mark, 2))) return 'rounded'
  return step?.gte(times(mark, 10)) && miss.lte(mark) ? 'coarse' : undefined
}

/** How far a literal is from a name that it agrees with, in millimetres. */
export const missOf = (literal: Literal, { lengths }: Candidate): number =>
  Math.max(...literal.lengths.map((length, i) => Math.abs(minus(length, lengths[i] ?? length).valueOf())))
