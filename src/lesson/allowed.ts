import { type Reading, report } from '../card/reading.ts'
import type { Entry } from '../card/yaml.ts'
import type { Allowed } from './lesson.ts'

/** Reads the rules that a lesson breaks on purpose: `allow:`, and below it a line `rule: the reason` for each. */
export function allowedIn(reading: Reading, entry: Entry | undefined): Allowed[] {
  if (entry === undefined || entry.kind === 'empty') return []
  if (entry.kind !== 'map') {
    const cure =
      'Write one rule and its reason a line, such as `crowded-step: It is one movement of the hands.`'
    report(reading, 'value', entry.place, '`allow` wants rules and reasons', cure)
    return []
  }
  return [...entry.fields.values()].flatMap(({ key, keyPlace, value }) => {
    const reason = value.kind === 'text' ? value.text.trim() : ''
    if (reason !== '') return [{ rule: key, reason, place: keyPlace }]
    report(
      reading,
      'no-reason',
      keyPlace,
      `It does not say why \`${key}\` is allowed`,
      `Write the reason behind it: \`${key}: because …\``,
    )
    return []
  })
}
