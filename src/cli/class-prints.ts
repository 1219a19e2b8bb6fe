import { basename, dirname, extname } from 'node:path'
import type { Browser } from 'puppeteer-core'
import type { Finding } from '../length/finding.ts'
import { publishHandout } from '../publish/handout.ts'
import { slug } from '../publish/slug.ts'
import type { Wording } from '../wording/wording.ts'
import { classKitListing } from '../workshop/class/class-kit-listing.ts'
import type { ClassWork } from '../workshop/class/class-work.ts'
import { attendanceListing, packingListing } from '../workshop/class/packing.ts'
import { prepareClass } from '../workshop/class/preparation.ts'
import { preparationListing } from '../workshop/class/preparation-listing.ts'
import type { TaughtFile } from '../workshop/class/read-with-lessons.ts'
import { runSheetListing } from '../workshop/class/run-sheet-listing.ts'
import type { Listing } from '../workshop/listing.ts'
import type { Options } from './flags.ts'
import type { Outside } from './outside.ts'
import { pagesFor } from './pages.ts'
import { printKitLabels } from './print-kit-labels.ts'
import { printListing } from './print-listing.ts'
import { printSettings } from './print-settings.ts'
import { printSheets } from './print-sheets.ts'

/** Where prints go, and what prints them. */
export interface Press {
  readonly options: Options
  readonly outside: Outside
  readonly browser: Promise<Browser>
}

/** Something that is printed for a class. */
export interface ClassPrint {
  /** As it is told while it is being made. */
  readonly title: string
  /** The word for it in the names of its files. */
  readonly what: string
  /** Prints it. Throws what publishing a handout throws. */
  readonly print: (press: Press) => Promise<void>
}

/**
 * All that is printed for a class, in the order in which it is wanted: the lists, the step sheets, the labels.
 *
 * @param found hears what is found in a lesson only when it is drawn.
 */
export function classPrints(
  work: ClassWork,
  found: (path: string, findings: readonly Finding[]) => void,
): ClassPrint[] {
  const { path, title, wording, file, lessons, first, plan, kit, run, labels } = work
  const { say } = wording
  const all = lessons.map(({ lesson }) => lesson)
  const list = (heading: string, what: string, listing: () => Listing): ClassPrint => ({
    title: heading,
    what,
    print: ({ options, outside, browser }) =>
      printListing(listing(), first.lesson, { path, what, wording, lessons: all }, options, outside, browser),
  })
  return [
    list(say('class.print', { print: 'kit' }), 'kit', () => classKitListing(kit)),
    {
      title: say('class.print', { print: 'sheets' }),
      what: 'sheets',
      print: ({ options, outside, browser }) =>
        printSheets({ title, path, wording }, plan, lessons, options, outside, browser),
    },
    list(say('class.print', { print: 'prepare' }), 'prepare', () =>
      preparationListing(prepareClass(file, lessons, plan), wording),
    ),
    list(say('class.run-sheet'), 'run-sheet', () => runSheetListing(run)),
    ...handouts(path, lessons, wording, found),
    {
      title: say('class.print', { print: 'labels' }),
      what: 'labels',
      print: async ({ options, outside, browser }) =>
        void (await printKitLabels({ path, title, wording }, labels, file.labels, options, outside, browser)),
    },
    list(say('class.print', { print: 'packing' }), 'packing', () =>
      packingListing(title, labels, kit.tables, wording),
    ),
    ...(file.guests.length > 0
      ? [list(say('class.who-comes'), 'attendance', () => attendanceListing(title, file, wording))]
      : []),
  ]
}

/** The step sheet of each lesson, in the size and unit of the class. */
function handouts(
  path: string,
  lessons: readonly TaughtFile[],
  { say }: Wording,
  found: (path: string, findings: readonly Finding[]) => void,
): ClassPrint[] {
  const names = lessons.map((one) => slug(basename(one.path, extname(one.path))))
  return lessons.map(({ path: from, lesson }, i) => {
    const name = names[i] ?? ''
    // A lesson that comes twice, in two sizes, and lessons of one name from two folders.
    const nth = names.slice(0, i).filter((other) => other === name).length
    const what = `step-sheet-${name}${nth > 0 ? `-${nth + 1}` : ''}`
    return {
      title: say('class.step-sheet', { title: lesson.frontMatter.title }),
      what,
      async print({ options, outside, browser }) {
        const pages = await pagesFor(path, what, options, outside)
        const settings = { ...pages, ...printSettings(options, outside), folder: dirname(from), browser }
        const { findings } = await publishHandout(lesson, settings, outside)
        found(
          from,
          findings.filter((finding) => !lesson.findings.includes(finding)),
        )
      },
    }
  })
}
