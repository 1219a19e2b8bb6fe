import { listOf } from '../length/finding.ts'
import { formatSize } from '../length/format.ts'
import type { FilledLesson } from '../lesson/lesson.ts'
import { handoutHtml } from '../publish/html.ts'
import { startBrowser } from '../publish/launch.ts'
import { measureText } from '../publish/measure.ts'
import { printPdf } from '../publish/pdf.ts'
import { loadTheme } from '../publish/theme.ts'
import { mayWrite, writeWhole } from '../publish/write.ts'
import type { Listing } from '../workshop/listing.ts'
import { tellWritten } from './answer.ts'
import type { Options } from './flags.ts'
import { listingBody } from './listing-page.ts'
import type { Outside } from './outside.ts'
import { pagesFor } from './pages.ts'
import { printSettings } from './print-settings.ts'

/**
 * Prints a list about a lesson as a page and a PDF, in the style of its handout. The page is written first, so it is
 * there when no browser is found.
 *
 * @param what a word for the file names, such as `kit`.
 * @throws what publishing a handout throws.
 */
export async function printListing(
  listing: Listing,
  lesson: FilledLesson,
  { path, what }: { path: string; what: string },
  options: Options,
  outside: Outside,
): Promise<void> {
  const { out, html: wantsHtml, pdf: wantsPdf } = await pagesFor(path, what, options, outside)
  const { paper, theme, force, browserPath } = printSettings(options, outside)
  const [page, pdf] = [`${out}.html`, `${out}.pdf`]
  if (wantsHtml) await mayWrite(page, force, outside)
  if (wantsPdf) await mayWrite(pdf, force, outside)
  const html = await listingHtml(listing, lesson, theme, paper)
  const write = async (path: string, data: Uint8Array): Promise<void> => {
    await writeWhole([{ path, data }], outside)
    tellWritten([path], options, outside)
  }
  if (wantsHtml) await write(page, new TextEncoder().encode(html))
  if (!wantsPdf) return
  const browser = await startBrowser(browserPath)
  try {
    await write(pdf, await printPdf(html, browser))
  } finally {
    await browser.close()
  }
}

async function listingHtml(
  listing: Listing,
  lesson: FilledLesson,
  theme: string,
  paper: 'a4' | 'letter',
): Promise<string> {
  const { css } = await loadTheme(theme)
  const sizes = lesson.cards.map(({ card }) => measureText(formatSize(card.closed, lesson.unit)))
  const head = {
    title: listing.title,
    lang: lesson.frontMatter.lang,
    foot: { title: listing.title, print: `${listOf(sizes)} ${sizes.length > 1 ? 'cards' : 'card'}` },
  }
  return handoutHtml(head, { css, body: () => listingBody(listing) }, { paper })
}
