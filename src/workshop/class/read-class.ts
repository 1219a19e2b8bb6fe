import { checkKeys, type Reading, report, wordOf } from '../../card/reading.ts'
import { readYaml } from '../../card/yaml.ts'
import type { Finding } from '../../length/finding.ts'
import { langIn } from '../../lesson/lang-key.ts'
import { readingOf, textsOf } from '../../lesson/yaml-reading.ts'
import { countIn, mostPeople } from './amounts.ts'
import type { ClassFile, ClassLesson } from './class-file.ts'
import { labelsIn } from './read-labels.ts'
import { lessonsIn } from './read-lessons.ts'
import { peopleIn } from './read-people.ts'
import { prepareIn } from './read-prepare.ts'
import { priceIn } from './read-price.ts'
import { sheetsIn } from './read-sheets.ts'
import { shopIn } from './read-shop.ts'
import { suppliesOffered } from './read-supplies.ts'
import { tablesIn } from './read-tables.ts'
import { timeKeys, timesIn } from './read-times.ts'
import { trimmerIn } from './read-trimmer.ts'
import { seatFindings } from './seating.ts'

const keys = [
  'title',
  'lesson',
  'lessons',
  'choices',
  'people',
  'spare',
  'lang',
  'units',
  'currency',
  'sheets',
  'supplies',
  'shop',
  'price',
  'tables',
  'trimmer',
  'prepare',
  'labels',
  ...timeKeys,
] as const

/**
 * Reads a class file. What is wrong is told with its place, and the rest is read all the same.
 *
 * @param text of the file: YAML.
 */
export function readClass(text: string): { file: ClassFile; findings: readonly Finding[] } {
  const start = text.startsWith('\ufeff') ? 1 : 0
  const { top, findings } = readYaml({
    text: text.slice(start).replace(/\r\n?/g, '\n'),
    place: { line: 1, column: 1, offset: start },
  })
  // What seems to be missing may stand in what could not be read.
  const isWhole = findings.length === 0
  const { fields } = top.value
  const reading = readingOf(findings)
  checkKeys(reading, fields, keys, 'the class file')
  const entry = (key: (typeof keys)[number]) => fields.get(key)?.value
  const [title] = textsOf(reading, entry('title'), '`title` wants a text', 'Write `title: Saturday class`')
  const [currency] = textsOf(reading, entry('currency'), '`currency` wants a sign', 'Write `currency: £`')
  const lang = langIn(reading, entry('lang'), 'the lists')
  const coming = peopleIn(reading, fields.get('people'), top.keyPlace)
  const lessons = lessonsIn(reading, fields, top.keyPlace)
  const price = priceIn(reading, fields.get('price'), coming?.people)
  const tables = tablesIn(reading, fields.get('tables'))
  findings.push(...seatFindings({ tables, people: coming?.people ?? 1, guests: coming?.guests ?? [] }))
  return {
    file: {
      ...(title && { title: title.text.trim() }),
      lessons: lessons.map((lesson) => checked(reading, lesson, coming?.people)),
      people: coming?.people ?? 1,
      guests: coming?.guests ?? [],
      spare: countIn(reading, entry('spare'), 'spare', 0, mostPeople) ?? 0,
      ...(lang && { lang }),
      ...(fields.has('units') && { units: wordOf(reading, entry('units'), ['in', 'mm']) }),
      currency: currency?.text.trim() ?? '',
      sheets: sheetsIn(reading, entry('sheets')),
      supplies: suppliesOffered(reading, entry('supplies')),
      shop: shopIn(reading, entry('shop')),
      ...(price && { price }),
      tables,
      trimmer: trimmerIn(reading, fields.get('trimmer')?.value),
      prepare: prepareIn(reading, entry('prepare')),
      times: timesIn(reading, fields),
      labels: labelsIn(reading, fields.get('labels')),
    },
    findings: isWhole ? findings : findings.filter(({ rule }) => rule !== 'missing-key'),
  }
}

/** Whether as many choose as come. */
function checked(reading: Reading, lesson: ClassLesson, all: number | undefined): ClassLesson {
  const people = lesson.people ?? all
  for (const { stock, place, takes } of lesson.choices) {
    const chosen = takes.reduce((sum, take) => sum + take.people, 0)
    if (people !== undefined && chosen !== people)
      report(
        reading,
        'choices',
        place,
        `${chosen} people choose for \`${stock}\`, but ${people} make this lesson`,
        `Make the numbers add up to ${people}`,
      )
  }
  return lesson
}
