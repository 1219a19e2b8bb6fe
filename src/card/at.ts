import type { ExpressionError } from '../length/expression.ts'
import type { Finding, Place } from '../length/finding.ts'
import type { Entry } from './yaml.ts'

/** A part of a place: from `start` to `end`, counted from its beginning. Expressions do not run over lines. */
export const within = (place: Place, start: number, end: number): Place => ({
  line: place.line,
  column: place.column + start,
  ...(place.offset !== undefined && {
    offset: place.offset + start,
    end: place.offset + Math.max(end, start),
  }),
})

/** A mistake in an expression as a finding: at the very part of the entry it is about, if that stands there as it is. */
export function findingAt(error: ExpressionError, entry: Entry & { kind: 'text' }): Finding {
  return {
    rule: error.rule,
    severity: 'error',
    message: error.message,
    ...(error.suggestion !== undefined && { suggestion: error.suggestion }),
    place: entry.plain ? within(entry.place, error.start, error.end) : entry.place,
  }
}
