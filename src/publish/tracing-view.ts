import { toHtml } from 'hast-util-to-html'
import { cutLinesOf } from '../draw/cut-lines.ts'
import { scaleRulers } from '../draw/scale-rulers.ts'
import { tracingPages } from '../draw/tracing-layout.ts'
import { tracingPage } from '../draw/tracing-page.ts'
import type { FilledLesson } from '../lesson/lesson.ts'
import { type Paper, paperSize } from './page-css.ts'
import { printWords } from './view.ts'

/**
 * What a page of templates leaves free: margins that no printer reaches, its heading, its rulers and its foot; in mm. How
 * near to the edge printers come is common practice, no source.
 */
export const kept = { sides: 10, top: 10, heading: 8, rulers: 21, foot: 15 } as const

/** What the page of templates is made of. */
export interface TracingView {
  readonly title: string
  readonly lang: string
  readonly foot: { readonly title: string; readonly print: string }
  readonly pages: readonly {
    readonly first: boolean
    /** Whether it has a part of a piece that is larger than the page. */
    readonly tiled: boolean
    readonly drawing: { readonly html: string }
  }[]
  readonly rulers: { readonly html: string }
}

/** The part of a paper that templates are laid out on, in mm. */
function tracingArea(paper: Paper): { width: number; height: number } {
  const { width, height } = paperSize(paper)
  const { sides, top, heading, rulers, foot } = kept
  // A little less, so that rounding never makes a page of its own.
  return { width: width - 2 * sides, height: height - top - heading - rulers - foot - 1 }
}

/** The templates of a lesson's pieces at their real size. */
export function tracingView({ frontMatter, cards, wording }: FilledLesson, paper: Paper): TracingView {
  const area = tracingArea(paper)
  const pages = cards.flatMap(({ card }) => tracingPages(cutLinesOf(card), area))
  return {
    title: wording.say('handout.templates-title', { title: frontMatter.title }),
    lang: frontMatter.lang,
    foot: { title: frontMatter.title, print: printWords({ cards, wording }) },
    pages: pages.map((traced, i) => ({
      first: i === 0,
      tiled: traced.some(({ tile }) => tile !== undefined),
      drawing: { html: toHtml(tracingPage(traced, area, wording), { space: 'svg' }) },
    })),
    rulers: { html: toHtml(scaleRulers(wording), { space: 'svg' }) },
  }
}
