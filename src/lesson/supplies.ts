import { attempt, checkKeys, type Reading, report } from '../card/reading.ts'
import { type Entry, type Field, readYaml, type YamlBlock } from '../card/yaml.ts'
import type { Finding } from '../length/finding.ts'
import { amountIn } from './amount.ts'
import type { Supplies, Supply } from './lesson.ts'
import type { Filling } from './measure.ts'
import { readingOf } from './yaml-reading.ts'

/** The groups of a list of supplies. */
export const supplyGroups = ['each', 'shared', 'tutor'] as const

/** Reads the supplies of a lesson; lengths may be worked out from the names of its cards. */
export function readSupplies(
  block: YamlBlock | undefined,
  filling: Filling,
): { supplies: Supplies; findings: Finding[] } {
  if (!block) return { supplies: { each: [], shared: [], tutor: [] }, findings: [] }
  const { top, findings } = readYaml(block)
  const { fields } = top.value
  const reading = readingOf(findings)
  checkKeys(reading, fields, supplyGroups, 'the supplies')
  const group = (key: (typeof supplyGroups)[number]): Supply[] =>
    suppliesIn(reading, fields.get(key)?.value, filling)
  return { supplies: { each: group('each'), shared: group('shared'), tutor: group('tutor') }, findings }
}

function suppliesIn(reading: Reading, entry: Entry | undefined, filling: Filling): Supply[] {
  if (entry === undefined || entry.kind === 'empty') return []
  if (entry.kind !== 'map') {
    const cure = 'Write one item and its amount a line, such as `scissors: 1`'
    report(reading, 'value', entry.place, 'Items and their amounts are wanted here', cure)
    return []
  }
  return [...entry.fields.values()].flatMap((field) => supplyIn(reading, field, filling))
}

function supplyIn(reading: Reading, { key, keyPlace, value }: Field, filling: Filling): Supply[] {
  const cure = 'Write how many, how long, `1 per 2`, or for example `a little`'
  if (value.kind !== 'text') {
    report(reading, 'value', value.place, `It does not say how much of \`${key}\``, cure)
    return []
  }
  const amount = attempt(reading, value, (text) => amountIn(text, filling))
  // It is on the list all the same, with what is written for it: what is wrong has been told at its place.
  return [{ item: key, amount: amount ?? { kind: 'text', text: value.text }, place: keyPlace }]
}
