import { type Finding, hasErrors } from '../../length/finding.ts'
import { formatSize } from '../../length/format.ts'
import { inches, mm, type Size, type Unit } from '../../length/length.ts'
import { mainCard } from '../../lesson/figure-target.ts'
import type { PageBrand } from '../../publish/brand/page-brand.ts'
import { listingBody } from '../../publish/listing-body.ts'
import type { PageHead } from '../../publish/page-html.ts'
import { sheetsView } from '../../publish/sheets-view.ts'
import { classKitListing } from '../../workshop/class/class-kit-listing.ts'
import { type ClassWork, workOut } from '../../workshop/class/class-work.ts'
import { packingListing } from '../../workshop/class/packing.ts'
import { prepareClass } from '../../workshop/class/preparation.ts'
import { preparationListing } from '../../workshop/class/preparation-listing.ts'
import { readClass } from '../../workshop/class/read-class.ts'
import { readWithLessons } from '../../workshop/class/read-with-lessons.ts'
import { runSheetListing } from '../../workshop/class/run-sheet-listing.ts'
import { uprightIn } from '../../workshop/class/to-cut.ts'
import { kitPieces } from '../../workshop/kit-pieces.ts'
import type { Listing } from '../../workshop/listing.ts'
import { brandBeside } from './brand.ts'
import type { PageOf, Settings, WorkshopData } from './engine.ts'
import { lessonAt } from './kept-lesson.ts'
import type { Themes } from './make-engine.ts'
import { pageOf } from './page-of.ts'

/** A class as the page asks for it. */
export interface ClassAsked {
  /** Text of the class file. */
  readonly text: string
  /** Texts of its lessons, by the path that stands in it. */
  readonly lessons: Readonly<Record<string, string>>
  /** The `workshop.yaml` that speaks for the class file. */
  readonly workshop?: WorkshopData
}

/** What a class needs. */
export interface ClassAnswer {
  readonly parts: readonly ClassPart[]
  readonly findings: readonly ClassFinding[]
}

/** A list or plan of the class, as a page. */
export interface ClassPart {
  readonly name: string
  readonly title: string
  readonly page: PageOf
}

/** What was found, and in which file. */
export interface ClassFinding extends Omit<Finding, 'place'> {
  readonly file: string
  readonly line?: number
}

/** What the class file itself is called where it has no name yet. */
const own = 'the class'

/** The lessons that a class file names, as they stand in it. */
export const lessonsOfClass = (text: string): readonly string[] =>
  readClass(text).file.lessons.map(({ path }) => path)

/**
 * Works out a class: kits, what to buy and what it costs, how the paper is cut, the evening before, and the day.
 *
 * @param settings unit and size hold for lessons where the class file does not say otherwise.
 */
export async function classOf(
  { text, lessons, workshop }: ClassAsked,
  settings: Settings,
  themes: Themes,
): Promise<ClassAnswer> {
  const folder = {
    path: own,
    pathOf: (path: string) => path,
    async read(path: string) {
      const found = lessons[path]
      if (found === undefined) throw new Error(`\`${path}\` is not in this folder`)
      return found
    },
  }
  const read = await readWithLessons(text, folder, settings.units ? { units: settings.units } : {})
  const findings = [...read.findings].flatMap(([file, all]) => all.map((finding) => findingIn(file, finding)))
  const [first] = read.lessons
  if (!first || [...read.findings.values()].some(hasErrors)) return { parts: [], findings }
  const work = await workOut(own, read, first, () => {})
  const { brand, findings: ofBrand } = await brandBeside(undefined, {
    pictures: {},
    ...(workshop && { workshop }),
  })
  return {
    parts: partsOf(work, brand, settings, themes),
    findings: [
      ...findings,
      ...[...ofBrand.map(({ place: _, ...one }) => one), ...work.kit.findings, ...work.run.findings].map(
        (one) => findingIn(own, one),
      ),
    ],
  }
}

const findingIn = (file: string, { place, ...finding }: Finding): ClassFinding => ({
  ...finding,
  file,
  ...(place && { line: place.line }),
})

function partsOf(
  work: ClassWork,
  brand: PageBrand | undefined,
  settings: Settings,
  themes: Themes,
): ClassPart[] {
  const { title, wording, file, lessons, first, plan, kit, run, labels } = work
  const { lang } = wording
  const print = wording.say('class.for-kits', { kits: first.kits })
  const page = (head: PageHead, css: string, body: string): PageOf =>
    pageOf(head, brand, { css, body }, settings)
  const list = (name: string, words: string, listing: Listing): ClassPart => {
    const head = { lang, title: listing.title, foot: { title: listing.title, print } }
    return {
      name,
      title: words,
      page: page(head, themes.page(settings.theme, 'handout').css, listingBody(listing)),
    }
  }
  const sheets = sheetsView({ title, wording, print }, plan, uprightIn(lessons))
  const sheetsTheme = themes.page<typeof sheets>(settings.theme, 'sheets')
  return [
    list('kit', 'Kits and shopping', classKitListing(kit)),
    {
      name: 'sheets',
      title: 'Cutting the paper',
      page: page(sheets, sheetsTheme.css, sheetsTheme.body(sheets)),
    },
    list('prepare', 'The evening before', preparationListing(prepareClass(file, lessons, plan), wording)),
    list('run-sheet', 'The day by the clock', runSheetListing(run)),
    list('packing', 'Packing', packingListing(title, labels, kit.tables, wording)),
  ]
}

/**
 * A class file for a lesson, to begin with: who comes, and a usual sheet of each stock, whose prices are for the teacher
 * to write. The sizes are common practice, no source.
 */
export function classFileFor(text: string, path: string, settings: Settings): string {
  const { filled } = lessonAt(text, settings)
  const { unit, cards } = filled
  const side = unit === 'in' ? inches(12) : mm(305)
  const main = mainCard(cards.map(({ card }) => card))
  const closed = settings.closed !== undefined && main ? [`    closed: ${typed(main.closed, unit)}`] : []
  const stocks = kitPieces(filled).flatMap((piece) => (piece.kind === 'piece' ? [piece.stock] : []))
  const sheets = [...new Set(stocks)].map(
    (stock) => `  ${JSON.stringify(stock)}: {size: ${typed({ width: side, height: side }, unit)}}`,
  )
  return [
    'lessons:',
    `  - lesson: ${JSON.stringify(path)}`,
    ...closed,
    `people: ${settings.people}`,
    `spare: ${settings.spare}`,
    `units: ${unit}`,
    ...(sheets.length > 0
      ? ['', '# The paper that is to be had. Add a price to each: price: 0.60', 'sheets:', ...sheets]
      : []),
    '',
  ].join('\n')
}

/** A size as a teacher types it. */
const typed = (size: Size, unit: Unit): string =>
  formatSize(size, unit)
    .replace('×', 'x')
    .replace(/[\u00a0\u202f]/g, ' ')
