import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { classKit } from '../../../src/workshop/class/class-kit.ts'
import { classKitListing } from '../../../src/workshop/class/class-kit-listing.ts'
import { classKitTables } from '../../../src/workshop/class/class-kit-tables.ts'
import { kitLabels } from '../../../src/workshop/class/kit-labels.ts'
import { attendanceListing, packingListing } from '../../../src/workshop/class/packing.ts'
import { peopleTables } from '../../../src/workshop/class/people-tables.ts'
import { planClass } from '../../../src/workshop/class/plan-class.ts'
import { prepareClass } from '../../../src/workshop/class/preparation.ts'
import { preparationListing } from '../../../src/workshop/class/preparation-listing.ts'
import { preparationTables } from '../../../src/workshop/class/preparation-tables.ts'
import { runSheet } from '../../../src/workshop/class/run-sheet.ts'
import { runSheetListing } from '../../../src/workshop/class/run-sheet-listing.ts'
import { runSheetTables } from '../../../src/workshop/class/run-sheet-tables.ts'
import { sheetsListing } from '../../../src/workshop/class/sheets-listing.ts'
import { sheetsTables } from '../../../src/workshop/class/sheets-tables.ts'
import { makeKit } from '../../../src/workshop/kit.ts'
import { kitListing } from '../../../src/workshop/kit-listing.ts'
import { kitTables } from '../../../src/workshop/kit-tables.ts'
import { listingText } from '../../../src/workshop/listing-text.ts'
import { measuresListing } from '../../../src/workshop/measures-listing.ts'
import { tablesCsv } from '../../../src/workshop/table-csv.ts'
import { leftovers, numbersIn } from './leftovers.ts'
import { classIn, classText, foreign, lessonIn } from './lesson.ts'

/** Everything that is listed of a class, by its name. */
async function everything(lang: string, people: number, spare: number, price?: string) {
  const { file, lessons, findings } = classIn(lang, classText(people, spare, price))
  expect(findings).toEqual([])
  const plan = await planClass(file, lessons, { unit: 'mm' })
  const kit = classKit(file, lessons, plan.purchases)
  const { wording } = kit
  const labels = kitLabels(file, lessons)
  const prepared = prepareClass(file, lessons, plan)
  const run = runSheet(file, lessons)
  const guests = {
    ...file,
    guests: [{ name: 'Gwendo', takes: ['Bruvol'], note: 'Chilm' }],
  }
  return {
    wording,
    kit: listingText(classKitListing(kit)),
    sheets: listingText(sheetsListing('Skarn', plan, wording)),
    preparation: listingText(preparationListing(prepared, wording)),
    run: listingText(runSheetListing(run)),
    packing: listingText(packingListing('Skarn', labels, kit.tables, wording)),
    packingWithoutTables: listingText(packingListing('Skarn', labels, [], wording)),
    attendance: listingText(attendanceListing('Skarn', guests, wording)),
    tables: [
      ...classKitTables(kit),
      ...sheetsTables('Skarn', plan, wording),
      ...preparationTables(prepared, wording),
      ...runSheetTables(run),
      ...peopleTables('Skarn', guests, labels, wording),
    ],
  }
}

describe.each(foreign)('in %s', (lang) => {
  test('the lists of a lesson have no word of another language', () => {
    const lesson = lessonIn(lang)
    const kit = makeKit(lesson, 2, 1)
    const texts = [kitListing(kit), measuresListing(lesson)].map((listing) => listingText(listing))
    const csv = tablesCsv(kitTables(kit), kit.wording)
    expect(leftovers([...texts, csv].join('\n'), lang)).toEqual([])
  })

  test('nor has anything of a class, with prices, tables, labels and what cannot be cut', async () => {
    const { wording, tables, ...texts } = await everything(lang, 4, 1)
    expect(leftovers(Object.values(texts).join('\n'), lang)).toEqual([])
    expect(leftovers(tablesCsv(tables, wording), lang)).toEqual([])
    expect(leftovers(tables.flatMap(({ name, title }) => [name, title]).join('\n'), lang)).toEqual([])
  })

  test('sheets of a workbook have names of their own, as short as a workbook wants them', async () => {
    const { tables } = await everything(lang, 4, 1)
    const names = tables.map(({ name }) => name)
    // Open XML allows 31 characters, and none of these (from memory).
    expect(names.filter((name) => name.length > 31 || /[[\]:*?/\\]/.test(name))).toEqual([])
    expect(new Set(names).size).toBe(names.length)
  })

  test('numbers have a decimal comma, and cells a semicolon between them', async () => {
    const { kit, tables, wording } = await everything(lang, 4, 1)
    const csv = tablesCsv(tables, wording)
    // Times of day aside, no digit has a point behind it.
    expect(`${kit}\n${csv}`).not.toMatch(/\d\.\d/)
    expect(kit).toMatch(/\d,\d\d\u00a0€/)
    expect(csv.split('\r\n').find((line) => line.includes('Tarvo'))).toMatch(/;2,25$|;2,25;/)
  })
})

test.each([
  ['de', 'Für 1 Person: 1 Paket.', 'Für 2 Personen und 1 Reservepaket: 3 Pakete.'],
  ['fr', 'Pour 1 personne\u00a0: 1 kit.', 'Pour 2 personnes et 1 kit de réserve\u00a0: 3 kits.'],
  ['es', 'Para 1 persona: 1 kit.', 'Para 2 personas y 1 kit de reserva: 3 kits.'],
])('one and two in %s', (lang, one, two) => {
  const intro = (people: number, spare: number) => kitListing(makeKit(lessonIn(lang), people, spare)).intro
  expect(intro(1, 0)).toBe(one)
  expect(intro(2, 1)).toBe(two)
})

test('the numbers are the same in every language', async () => {
  await fc.assert(
    fc.asyncProperty(
      fc.integer({ min: 2, max: 9 }),
      fc.integer({ min: 0, max: 2 }),
      fc.integer({ min: 1, max: 999 }),
      async (people, spare, cents) => {
        const price = (cents / 100).toFixed(2)
        const {
          wording: _,
          tables: __,
          sheets: ___,
          ...english
        } = await everything('en', people, spare, price)
        for (const lang of foreign) {
          const own = await everything(lang, people, spare, price)
          for (const [list, text] of Object.entries(english))
            expect([lang, list, numbersIn(own[list as keyof typeof english])]).toEqual([
              lang,
              list,
              numbersIn(text),
            ])
        }
      },
    ),
    { numRuns: 4 },
  )
}, 60_000)

test('a class file chooses the language of its lists, and the lesson keeps its own words', () => {
  const { file, lessons, findings } = classIn('en', `lang: de\n${classText(2, 0)}`)
  expect(findings).toEqual([])
  const { intro, sections } = classKitListing(classKit(file, lessons, []))
  expect(intro).toBe('Für 2 Personen.')
  expect(sections[0]?.rows.map(([what]) => what)).toContain('Vornix')
})

test.each([
  ['nonsense!', 'value', 'error'],
  ['nl', 'foreign-words', 'warning'],
])('`lang: %s` is told at its place', (lang, rule, severity) => {
  const { findings } = classIn('en', `lang: ${lang}\n${classText(2, 0)}`)
  expect(findings).toMatchObject([{ rule, severity, place: { line: 1, column: 7 } }])
})
