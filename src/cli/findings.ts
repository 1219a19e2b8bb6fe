import type { Finding } from '../length/finding.ts'
import type { Options } from './flags.ts'

/**
 * Findings as a terminal shows them, one line each and its cure below:
 *
 *     harbour.md:12:3 error Unexpected name `bakdrop`, expected a piece of this card (unknown-name)
 *       Write `backdrop`
 *
 * One about the file as a whole is told at its start. With `--quiet` only errors are told.
 */
export function findingsText(file: string, findings: readonly Finding[], { quiet }: Options): string {
  return findings
    .filter(({ severity }) => !quiet || severity === 'error')
    .map(({ rule, severity, message, suggestion, place }) => {
      const { line, column } = place ?? { line: 1, column: 1 }
      const cure = suggestion === undefined ? '' : `\n  ${suggestion}`
      return `${visible(`${file}:${line}:${column} ${severity} ${message} (${rule})${cure}`)}\n`
    })
    .join('')
}

/** Whatever stands in a lesson, its text cannot steer the terminal. */
const visible = (text: string): string => text.replaceAll(/(?!\n)\p{Cc}/gu, '\ufffd')
