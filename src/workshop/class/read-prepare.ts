import { checkKeys, fieldsOf, type Reading, report } from '../../card/reading.ts'
import type { Entry } from '../../card/yaml.ts'
import { suggestWord } from '../../length/finding.ts'
import { minutesIn } from '../../lesson/minutes-in.ts'
import { textsOf } from '../../lesson/yaml-reading.ts'
import type { Preparation, PreparationMinutes } from './class-file.ts'

/** Common practice, no source: half a minute for a cut and for a score, six seconds an item, a minute a kit. */
export const usualMinutes: PreparationMinutes = { cut: 0.5, score: 0.5, item: 0.1, kit: 1 }

const works = ['cut', 'score', 'nothing'] as const
const example = 'Write `prepare: cut`, `prepare: [cut, score]` or `prepare: nothing`'
const minutesExample = 'Write for example `prepare: {do: [cut, score], minutes: {cut: 0.5, kit: 2}}`'

/**
 * What is done before the class: `prepare: [cut, score]`, or with the minutes of each,
 * `prepare: {do: cut, minutes: {cut: 0.5}}`. Where nothing is said the paper is cut, and the guests score.
 */
export function prepareIn(reading: Reading, entry: Entry | undefined): Preparation {
  if (entry?.kind !== 'map') return { ...worksIn(reading, entry), minutes: usualMinutes, own: new Set() }
  checkKeys(reading, entry.fields, ['do', 'minutes'], '`prepare`')
  const own = minutesOf(reading, entry.fields.get('minutes')?.value)
  return {
    ...worksIn(reading, entry.fields.get('do')?.value),
    minutes: { ...usualMinutes, ...own },
    own: new Set(Object.keys(own) as (keyof PreparationMinutes)[]),
  }
}

function worksIn(reading: Reading, entry: Entry | undefined): { cut: boolean; score: boolean } {
  if (entry === undefined || entry.kind === 'empty') return { cut: true, score: false }
  const said = textsOf(reading, entry, '`prepare` wants what is done before the class', example)
  const known = said.flatMap(({ text, place }) => {
    const word = works.find((one) => one === text.trim().toLowerCase())
    if (word !== undefined) return [{ word, place }]
    report(
      reading,
      'value',
      place,
      `Unexpected \`${text.trim()}\`, expected what is done before the class`,
      suggestWord(text.trim(), works),
    )
    return []
  })
  const nothing = known.find(({ word }) => word === 'nothing')
  if (nothing && known.length > 1)
    report(reading, 'value', nothing.place, 'This is `nothing` and something', example)
  if (known.length === 0) return { cut: true, score: false }
  return {
    cut: known.some(({ word }) => word === 'cut'),
    score: known.some(({ word }) => word === 'score'),
  }
}

/** The minutes that a class file gives, by what they are for. */
function minutesOf(reading: Reading, entry: Entry | undefined): Partial<PreparationMinutes> {
  const fields = fieldsOf(reading, entry, '`minutes` wants what takes how long', minutesExample)
  const keys = Object.keys(usualMinutes) as (keyof PreparationMinutes)[]
  checkKeys(reading, fields, keys, 'the minutes')
  return Object.fromEntries(
    keys.flatMap((key) => {
      const [item] = textsOf(
        reading,
        fields.get(key)?.value,
        `\`${key}\` wants how long it takes`,
        minutesExample,
      )
      const minutes = item && minutesIn(item.text)
      if (item && minutes === undefined)
        report(
          reading,
          'value',
          item.place,
          `\`${item.text.trim()}\` does not say how many minutes`,
          `Write for example \`${key}: 0.5\` or \`${key}: 1/2 min\``,
        )
      return minutes === undefined ? [] : [[key, minutes]]
    }),
  )
}
