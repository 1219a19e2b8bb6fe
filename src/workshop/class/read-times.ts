import { checkKeys, fieldsOf, type Reading, report } from '../../card/reading.ts'
import type { Entry, Fields } from '../../card/yaml.ts'
import { minutesIn } from '../../lesson/minutes-in.ts'
import { textsOf } from '../../lesson/yaml-reading.ts'
import type { ClassTimes, Pause } from './class-file.ts'
import { type Clock, clockIn } from './clock.ts'

/** The keys of a class file that are about time. */
export const timeKeys = ['start', 'end', 'breaks', 'welcome', 'clearing'] as const

/** When the class begins and should end, and what its time goes on besides the steps. */
export function timesIn(reading: Reading, fields: Fields): ClassTimes {
  const entry = (key: (typeof timeKeys)[number]): Entry | undefined => fields.get(key)?.value
  const start = clock(reading, entry('start'), 'start')
  const end = clock(reading, entry('end'), 'end')
  if (start !== undefined && end !== undefined && end <= start)
    report(
      reading,
      'value',
      fields.get('end')?.keyPlace ?? { line: 1, column: 1 },
      'The class ends before it starts',
      'Write a later time, such as `end: 12:30`',
    )
  return {
    ...(start !== undefined && { start }),
    ...(end !== undefined && { end, endPlace: fields.get('end')?.keyPlace ?? { line: 1, column: 1 } }),
    welcome: minutes(reading, entry('welcome'), 'welcome') ?? 0,
    clearing: minutes(reading, entry('clearing'), 'clearing') ?? 0,
    breaks: breaksIn(reading, entry('breaks')),
  }
}

function clock(reading: Reading, entry: Entry | undefined, key: string): Clock | undefined {
  const cure = `Write a time of day, such as \`${key}: 10:30\``
  const [item] = textsOf(reading, entry, `\`${key}\` wants a time of day`, cure)
  const read = item && clockIn(item.text)
  if (item && read === undefined)
    report(reading, 'value', item.place, `\`${item.text.trim()}\` is no time of day`, cure)
  return read
}

function minutes(reading: Reading, entry: Entry | undefined, key: string): number | undefined {
  const cure = `Write for example \`${key}: 10 min\``
  const [item] = textsOf(reading, entry, `\`${key}\` wants how long it takes`, cure)
  const read = item && minutesIn(item.text)
  if (item && read === undefined)
    report(reading, 'value', item.place, `\`${item.text.trim()}\` does not say how long`, cure)
  return read
}

const example = 'Write for example `breaks: [{at: 11:15, for: 15 min, name: tea}]`'

function breaksIn(reading: Reading, entry: Entry | undefined): Pause[] {
  if (entry === undefined || entry.kind === 'empty') return []
  const items = entry.kind === 'list' ? entry.items : [entry]
  return items
    .flatMap((item): Pause[] => {
      const fields = fieldsOf(reading, item, 'A break wants its time', example)
      if (item.kind !== 'map') return []
      checkKeys(reading, fields, ['at', 'for', 'name'], 'a break')
      const at = clock(reading, fields.get('at')?.value, 'at')
      const long = minutes(reading, fields.get('for')?.value, 'for')
      const [name] = textsOf(reading, fields.get('name')?.value, '`name` wants a word', example)
      if (!fields.has('at') || !fields.has('for'))
        report(reading, 'missing-key', item.place, 'A break wants when it begins and how long it is', example)
      return at === undefined || long === undefined
        ? []
        : [{ at, minutes: long, name: name?.text.trim() ?? 'break', place: item.place }]
    })
    .sort((a, b) => a.at - b.at)
}
