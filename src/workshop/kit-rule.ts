import type { Amount } from '../lesson/lesson.ts'
import type { Wording } from '../wording/wording.ts'

/** By what a supply is shared. */
export type SharingRule = Extract<Amount, { kind: 'per' | 'per table' }>

/** `1 per 3`, as a lesson writes it. */
export const ruleNotation = (rule: SharingRule): string =>
  rule.kind === 'per' ? `${rule.count} per ${rule.people}` : `${rule.count} per table`

/** The same as a list says it; nothing where there is no rule. */
export function ruleText(rule: SharingRule | undefined, wording: Wording): string {
  if (rule === undefined) return ''
  return rule.kind === 'per'
    ? wording.say('kit.per', { count: rule.count, people: rule.people })
    : wording.say('kit.per-table', { count: rule.count })
}
