import type { VFile } from 'vfile'
import type { VFileMessage } from 'vfile-message'
import type { Finding, Place } from '../length/finding.ts'

/**
 * Puts findings on a file as messages: `ruleId` is the rule, `source` is `foldlore`, `note` says what would cure it, and
 * errors are `fatal`. A word to write instead is in `expected`.
 */
export function toMessages(findings: readonly Finding[], file: VFile): VFileMessage[] {
  const text = String(file)
  return findings.map(({ rule, severity, message, suggestion, place }) => {
    const made = file.message(message, {
      source: 'foldlore',
      ruleId: rule,
      ...(place && { place: positionOf(place, text) }),
    })
    made.fatal = { error: true, warning: false, hint: undefined }[severity]
    if (suggestion !== undefined) made.note = suggestion
    const word = /^Write `([^`]+)`$/.exec(suggestion ?? '')?.[1]
    if (word !== undefined && place?.offset !== undefined && place.end !== undefined) {
      made.actual = text.slice(place.offset, place.end)
      made.expected = [word]
    }
    return made
  })
}

type Point = { line: number; column: number; offset?: number }

/** A range if it lies on one line; otherwise the point where it starts. */
function positionOf(
  { line, column, offset, end }: Place,
  text: string,
): Point | { start: Point; end: Point } {
  if (offset === undefined) return { line, column }
  const start = { line, column, offset }
  if (end === undefined || end <= offset || /[\r\n]/.test(text.slice(offset, end))) return start
  return { start, end: { line, column: column + end - offset, offset: end } }
}
