import type { Browser } from 'puppeteer-core'
import type { FilledLesson } from '../lesson/lesson.ts'
import { handoutHtml } from '../publish/html.ts'
import { listingBody } from '../publish/listing-body.ts'
import { measureText } from '../publish/measure.ts'
import type { Paper } from '../publish/page-css.ts'
import type { PageHead } from '../publish/page-html.ts'
import { printPdf } from '../publish/pdf.ts'
import { loadStyle } from '../publish/theme.ts'
import type { Wording } from '../wording/wording.ts'
import type { Listing } from '../workshop/listing.ts'
import type { Options } from './flags.ts'
import type { Outside } from './outside.ts'
import { brandFor } from './print-brand.ts'
import { type Printing, printPages } from './print-pages.ts'

/** What a list is made from. */
export interface ListedFile {
  readonly path: string
  /** A word for the names of the files, such as `kit`. */
  readonly what: string
  /** How it speaks. */
  readonly wording: Wording
  /** All lessons that it is about, where they are several. */
  readonly lessons?: readonly FilledLesson[]
}

/** Prints a list about a lesson as a page and a PDF, in the style of its handout. Throws what `printPages` throws. */
export async function printListing(
  listing: Listing,
  lesson: FilledLesson,
  from: ListedFile,
  options: Options,
  outside: Outside,
  browser?: Promise<Browser>,
): Promise<void> {
  const brand = await brandFor(from.path, from.lessons ? undefined : lesson, options, outside)
  const html = (theme: string, paper: Paper): Promise<string> =>
    listingHtml(listing, from.lessons ?? [lesson], from.wording, brand, theme, paper)
  const pdf: Printing['pdf'] = (page, _, running) => printPdf(page, running)
  await printPages(from, { html, pdf }, options, outside, browser)
}

async function listingHtml(
  listing: Listing,
  lessons: readonly FilledLesson[],
  wording: Wording,
  brand: Pick<PageHead, 'brand'>,
  theme: string,
  paper: Paper,
): Promise<string> {
  const css = await loadStyle(theme)
  const all = lessons.flatMap(({ cards, unit }) =>
    cards.map(({ card }) => measureText(wording.in(unit).size(card.closed))),
  )
  const sizes = wording.list([...new Set(all)])
  const head = {
    ...brand,
    title: listing.title,
    lang: wording.lang,
    foot: { title: listing.title, print: wording.say('class.cards', { sizes, count: all.length }) },
  }
  return handoutHtml(head, { css, body: () => listingBody(listing) }, { paper })
}
