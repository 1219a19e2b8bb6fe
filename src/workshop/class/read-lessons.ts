import { attempt, checkKeys, fieldsOf, type Reading, report } from '../../card/reading.ts'
import type { Entry, Fields } from '../../card/yaml.ts'
import type { Place } from '../../length/finding.ts'
import { readSize } from '../../length/text.ts'
import { textsOf } from '../../lesson/yaml-reading.ts'
import { countIn, mostPeople } from './amounts.ts'
import type { Choice, ClassLesson } from './class-file.ts'

const keys = ['lesson', 'people', 'closed', 'choices'] as const
const example = 'Write the name of its file, such as `lesson: harbour-lights.md`'

/** Nobody teaches more in a class. */
const mostLessons = 20

/** The lessons of a class: one under `lesson`, or a list under `lessons`; `choices` beside `lesson` belong to it. */
export function lessonsIn(reading: Reading, fields: Fields, start: Place): ClassLesson[] {
  const [one, several] = [fields.get('lesson'), fields.get('lessons')]
  if (one && several)
    report(
      reading,
      'value',
      one.keyPlace,
      'A class has `lesson` or `lessons`, not both',
      'Put all of them under `lessons`',
    )
  if (!one && !several) report(reading, 'missing-key', start, 'The class has no lesson', example)
  const items = several?.value.kind === 'list' ? several.value.items : several ? [several.value] : []
  const alone = one ? lessonOf(reading, one.value, fields) : []
  const beyond = items[mostLessons]
  if (beyond)
    report(
      reading,
      'too-many',
      beyond.place,
      `A class has ${mostLessons} lessons at most`,
      'Write another class file for the rest',
    )
  return [...alone, ...items.slice(0, mostLessons).flatMap((item) => lessonOf(reading, item, undefined))]
}

function lessonOf(reading: Reading, entry: Entry, beside: Fields | undefined): ClassLesson[] {
  const fields: Fields = entry.kind === 'map' ? entry.fields : new Map()
  if (entry.kind === 'map') checkKeys(reading, fields, keys, 'a lesson of the class')
  const named = entry.kind === 'map' ? fields.get('lesson')?.value : entry
  const [path] = textsOf(reading, named, 'The file of a lesson is wanted here', example)
  if (!path) {
    if (!named || named.kind === 'empty')
      report(reading, 'missing-key', entry.place, 'This lesson has no file', example)
    return []
  }
  const people = countIn(reading, fields.get('people')?.value, 'people', 1, mostPeople)
  const [size] = textsOf(
    reading,
    fields.get('closed')?.value,
    'A size is wanted here',
    'Write for example `closed: 6 x 6 in`',
  )
  const closed = size && attempt(reading, size, readSize)
  return [
    {
      path: path.text.trim(),
      place: path.place,
      ...(people !== undefined && { people }),
      ...(closed && { closed }),
      choices: choicesIn(reading, (beside ?? fields).get('choices')?.value),
    },
  ]
}

/** `choices: {dark blue card: {dark blue card: 8, dark green card: 6}}` */
function choicesIn(reading: Reading, entry: Entry | undefined): Choice[] {
  const cure = 'Write for example `choices: {blue card: {blue card: 8, green card: 6}}`'
  return [...fieldsOf(reading, entry, '`choices` wants a stock of the lesson', cure).values()].map(
    ({ key, keyPlace, value }) => ({
      stock: key,
      place: keyPlace,
      takes: [
        ...fieldsOf(reading, value, 'A choice wants stocks and how many take them', cure).values(),
      ].flatMap((take) => {
        const people = countIn(reading, take.value, take.key, 0, mostPeople)
        return people === undefined ? [] : [{ stock: take.key, people }]
      }),
    }),
  )
}
