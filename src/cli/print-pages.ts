import type { Browser } from 'puppeteer-core'
import { browserUnderWay } from '../publish/launch.ts'
import type { Paper } from '../publish/page-css.ts'
import { mayWrite, writeWhole } from '../publish/write.ts'
import { tellWritten } from './answer.ts'
import type { Options } from './flags.ts'
import type { Outside } from './outside.ts'
import { pagesFor } from './pages.ts'
import { printSettings } from './print-settings.ts'

/** How something is printed. */
export interface Printing {
  /** The page, which stands alone. */
  readonly html: (theme: string, paper: Paper) => Promise<string>
  /** The PDF of that page. */
  readonly pdf: (html: string, paper: Paper, browser: Browser) => Promise<Uint8Array>
}

/**
 * Prints something of a lesson as a page and a PDF, whichever `-o` asks for. The page is written first, so it is there
 * when no browser is found.
 *
 * @param path of the lesson.
 * @param what a word for the file names, such as `kit`.
 * @param shared a browser for several prints, that runs or will; without it one is started. It is not closed.
 * @returns the paths of what was written; they have been told unless the answer is JSON.
 * @throws what publishing a handout throws.
 */
export async function printPages(
  { path, what }: { path: string; what: string },
  { html, pdf }: Printing,
  options: Options,
  outside: Outside,
  shared?: Promise<Browser>,
): Promise<string[]> {
  const pages = await pagesFor(path, what, options, outside)
  const { paper, theme, force, browserPath } = printSettings(options, outside)
  const paths = [...(pages.html ? [`${pages.out}.html`] : []), ...(pages.pdf ? [`${pages.out}.pdf`] : [])]
  for (const one of paths) await mayWrite(one, force, outside)
  const own = pages.pdf && !shared ? await browserUnderWay(browserPath) : undefined
  const write = async (ending: string, data: Uint8Array): Promise<void> => {
    await writeWhole([{ path: `${pages.out}${ending}`, data }], outside)
    if (!options.json) tellWritten([`${pages.out}${ending}`], options, outside)
  }
  try {
    const page = await html(theme, paper)
    if (pages.html) await write('.html', new TextEncoder().encode(page))
    const browser = pages.pdf ? await (shared ?? own?.browser) : undefined
    if (browser) await write('.pdf', await pdf(page, paper, browser))
    return paths
  } finally {
    await own?.stop()
  }
}
