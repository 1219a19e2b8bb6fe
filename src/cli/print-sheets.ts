import type { Browser } from 'puppeteer-core'
import { printPdf } from '../publish/pdf.ts'
import { sheetsHtml } from '../publish/sheets.ts'
import type { Wording } from '../wording/wording.ts'
import type { Taught } from '../workshop/class/taught.ts'
import { uprightIn } from '../workshop/class/to-cut.ts'
import type { CuttingPlan } from '../workshop/cutting/cutting.ts'
import type { Options } from './flags.ts'
import type { Outside } from './outside.ts'
import { brandFor } from './print-brand.ts'
import { printPages } from './print-pages.ts'

/** Prints a cutting plan with its drawings as a page and a PDF. Throws what `printPages` throws. */
export async function printSheets(
  { title, path, wording }: { readonly title: string; readonly path: string; readonly wording: Wording },
  plan: CuttingPlan,
  lessons: readonly Taught[],
  options: Options,
  outside: Outside,
  browser?: Promise<Browser>,
): Promise<void> {
  const [first] = lessons
  const about = {
    title,
    wording,
    print: wording.say('class.for-kits', { kits: first?.kits ?? 0 }),
  }
  const { brand } = await brandFor(path, undefined, options, outside)
  await printPages(
    { path, what: 'sheets' },
    {
      html: (theme, paper) => sheetsHtml(about, plan, uprightIn(lessons), paper, theme, brand),
      pdf: (page, _, running) => printPdf(page, running),
    },
    options,
    outside,
    browser,
  )
}
