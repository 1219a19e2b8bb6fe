import { type Finding, suggestWord } from '../../length/finding.ts'
import type { Allowed } from '../lesson.ts'

/**
 * The findings that are told: those of rules that the lesson breaks on purpose are not. Errors always are. A rule that
 * does not exist, or whose findings are gone, is told.
 *
 * @param known names of the rules that can be allowed.
 * @param complete whether all of the lesson was looked at.
 */
export function withoutAllowed(
  findings: readonly Finding[],
  allow: readonly Allowed[],
  known: readonly string[],
  complete: boolean,
): Finding[] {
  if (allow.length === 0) return [...findings]
  const rules = new Set(allow.map(({ rule }) => rule))
  const isHidden = ({ rule, severity }: Finding): boolean => severity !== 'error' && rules.has(rule)
  const found = new Set(findings.filter(isHidden).map(({ rule }) => rule))
  const about = allow.flatMap(({ rule, place }): Finding[] => {
    if (!known.includes(rule))
      return [
        {
          rule: 'unknown-rule',
          severity: 'error',
          message: `Unexpected rule \`${rule}\``,
          suggestion: suggestWord(rule, known),
          place,
        },
      ]
    if (found.has(rule) || !complete) return []
    return [
      {
        rule: 'unused-allow',
        severity: 'hint',
        message: `Nothing in the lesson breaks \`${rule}\` any more`,
        suggestion: 'Take the line out',
        place,
      },
    ]
  })
  return [...findings.filter((finding) => !isHidden(finding)), ...about]
}
