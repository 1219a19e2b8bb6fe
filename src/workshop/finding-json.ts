import type { Finding, Severity } from '../length/finding.ts'

/** A finding for other programs. One about the file as a whole has no place. */
export interface FindingJson {
  readonly rule: string
  readonly severity: Severity
  readonly line?: number
  readonly column?: number
  readonly message: string
  readonly suggestion?: string
}

/** A finding as every `--json` writes it. */
export const findingJson = ({ rule, severity, place, message, suggestion }: Finding): FindingJson => ({
  rule,
  severity,
  ...(place && { line: place.line, column: place.column }),
  message,
  ...(suggestion !== undefined && { suggestion }),
})
