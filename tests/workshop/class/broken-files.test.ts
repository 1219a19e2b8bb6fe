import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { hasErrors } from '../../../src/length/finding.ts'
import { fillLesson } from '../../../src/lesson/fill.ts'
import { readLesson } from '../../../src/lesson/read.ts'
import type { ClassFile } from '../../../src/workshop/class/class-file.ts'
import { classKit } from '../../../src/workshop/class/class-kit.ts'
import { classKitListing } from '../../../src/workshop/class/class-kit-listing.ts'
import { classKitTables } from '../../../src/workshop/class/class-kit-tables.ts'
import { kitLabels } from '../../../src/workshop/class/kit-labels.ts'
import { packingListing } from '../../../src/workshop/class/packing.ts'
import { readClass } from '../../../src/workshop/class/read-class.ts'
import { runSheet } from '../../../src/workshop/class/run-sheet.ts'
import { runSheetListing } from '../../../src/workshop/class/run-sheet-listing.ts'
import { runSheetTables } from '../../../src/workshop/class/run-sheet-tables.ts'
import { taughtLesson } from '../../../src/workshop/class/taught.ts'
import { listingText } from '../../../src/workshop/listing-text.ts'
import { tablesCsv } from '../../../src/workshop/table-csv.ts'

const read = (name: string) => readFileSync(new URL(`../../../lessons/${name}`, import.meta.url), 'utf8')
const saturday = read('saturday.yaml')
const lesson = fillLesson(readLesson(read('harbour-lights.md')))

/** What somebody might write in the place of a value, by mistake or out of spite. */
const values = [
  ...['', '0', '-1', '1.5', '1e9', '999999', '1000000000', '99999999999999999999', 'abc'],
  ...['~', 'true', '[]', '{}', '[[[]]]', '{a: {b: c}}', '&a [*a]', '*a', '!!binary x', '|', '"', "'"],
  ...[
    '0 x 0 in',
    '-3 x 4 in',
    '1e9 x 1e9 in',
    '1/0 in',
    'A4',
    '10 m',
    '-2 m',
    '£1,80',
    '25:99',
    '00:00',
    '24 h',
  ],
  ...[
    '10 min',
    '-5 min',
    '1000 h',
    '=1+1',
    '<script>',
    '\u0000',
    '\u202e',
    '🂡',
    'x'.repeat(3000),
    '#',
    '@',
    '%',
  ],
]
const lines = saturday.split('\n')
const value = fc.constantFrom(...values)
/** One thing that is done to a line of the text. */
const mistake = fc.record({
  kind: fc.constantFrom('drop', 'move', 'swap', 'insert'),
  at: fc.nat(lines.length - 1),
  nth: fc.nat(40),
  value,
})
type Mistake = typeof mistake extends fc.Arbitrary<infer T> ? T : never

function withMistake(text: readonly string[], { kind, at, nth, value: other }: Mistake): string[] {
  const old = text[at] ?? ''
  const rest = text.toSpliced(at, 1)
  if (kind === 'drop') return rest
  if (kind === 'move') return rest.toSpliced(nth, 0, old)
  if (kind === 'insert') return rest.toSpliced(at, 0, `${old.slice(0, nth)}${other}${old.slice(nth)}`)
  // Another value behind one of the colons.
  let seen = 0
  const colons = (old.match(/: *[^,{}[\]]+/g) ?? []).length
  const swapped = old.replace(/(: *)([^,{}[\]]+)/g, (all, colon) =>
    seen++ === nth % colons ? `${colon}${other}` : all,
  )
  return rest.toSpliced(at, 0, swapped)
}

/** All that is made of a class file with one lesson, whatever stands in it; the sheets are another matter. */
function everything(file: ClassFile): string {
  const lessons = file.lessons.slice(0, 1).map((one) => taughtLesson(one, lesson, file).taught)
  if (lessons.length === 0) return ''
  const kit = classKit(file, lessons, [])
  const run = runSheet(file, lessons)
  const labels = kitLabels(file, lessons)
  return [
    listingText(classKitListing(kit)),
    listingText(runSheetListing(run)),
    listingText(packingListing('Saturday', labels, kit.tables, kit.wording)),
    tablesCsv([...classKitTables(kit), ...runSheetTables(run)], kit.wording),
    ...[...kit.findings, ...run.findings].map(({ message }) => message),
  ].join('\n')
}

describe('a class file with mistakes', () => {
  test('is read to its end, tells each with its place and a cure, and what is good of it can be used', () => {
    let used = 0
    fc.assert(
      fc.property(fc.array(mistake, { minLength: 1, maxLength: 4 }), (mistakes) => {
        const text = mistakes.reduce(withMistake, lines).join('\n')
        const { file, findings } = readClass(text)
        for (const { message, suggestion = '', place } of findings) {
          expect(`${message}\n${suggestion}`).not.toMatch(/undefined|NaN|\bnull\b(?!`)/)
          expect(suggestion).not.toBe('')
          expect(place?.line).toBeGreaterThan(0)
          expect(place?.column).toBeGreaterThan(0)
        }
        if (hasErrors(findings)) return
        used++
        expect(everything(file)).not.toMatch(/undefined|\bNaN\b|Infinity/)
      }),
      { numRuns: 250 },
    )
    expect(used).toBeGreaterThan(20)
  }, 60_000)

  test.each([
    ['people: 1000000000', 'people: 14', 'too-many'],
    ['people: 2001', 'people: 14', 'too-many'],
    ['spare: 999999', 'spare: 2', 'too-many'],
    ['dark blue card: 2001', 'dark blue card: 8', 'too-many'],
    [`lessons:\n${'  - a.md\n'.repeat(21)}`, 'lessons:', 'too-many'],
    [`people: [${'A, '.repeat(2001)}]`, 'people: 14', 'too-many'],
  ])('%#: more than a class can be is told', (much, instead, rule) => {
    const { findings } = readClass(saturday.replace(instead, much))
    expect(findings.map((finding) => finding.rule)).toContain(rule)
  })

  test.each([
    ['size: 9 x 12 in', 'size: 900 m x 12 in', 'No sheet is so large'],
    ['3 of 8 x 4 in', '3 of 8 x 99999 in', 'No sheet is so large'],
    ['3 of 8 x 4 in', '3 of 0 x 4 in', 'A sheet is larger than nothing'],
    ['3 of 8 x 4 in', '-8 in x 4 in', 'A sheet is larger than nothing'],
  ])('%s becomes %s: %s', (from, to, told) => {
    const { file, findings } = readClass(saturday.replace(from, to))
    expect(findings.map(({ message }) => message)).toEqual([told])
    expect(file.sheets.get('vellum')?.length).toBe(1)
  })

  test('the largest class that is read is worked out in good time', () => {
    const text = saturday
      .replace('people: 14', 'people: 2000')
      .replace('spare: 2', 'spare: 2000')
      .replace(/choices:\n.*\n/, '')
    const { file, findings } = readClass(text)
    expect(findings).toEqual([])
    expect(everything(file)).toContain('4000')
  }, 20_000)

  test('aliases in aliases do not blow up', () => {
    const letters = 'abcdefghij'
    const bomb = [...letters].map((letter, i) => {
      const of = letters[i - 1]
      return `${letter}: &${letter} [${of ? Array(9).fill(`*${of}`).join(', ') : 'x, x, x, x, x, x, x, x, x'}]`
    })
    const { findings } = readClass(`${saturday}\n${bomb.join('\n')}\n`)
    expect(findings.length).toBeLessThan(200)
    expect(findings.map(({ message }) => message)).toContain('Too many aliases')
  }, 5000)
})
