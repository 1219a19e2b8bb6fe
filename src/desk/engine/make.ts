import { hasErrors } from '../../length/finding.ts'
import type { FilledLesson } from '../../lesson/lesson.ts'
import { exportLesson } from '../../publish/export.ts'
import { figuresOf } from '../../publish/figures-of.ts'
import { pageStandingAlone } from '../../publish/page-html.ts'
import { codesFor } from '../../publish/scan.ts'
import { slug } from '../../publish/slug.ts'
import { type TracingView, tracingView } from '../../publish/tracing-view.ts'
import { handoutView } from '../../publish/view.ts'
import { listingMarkdown } from '../../workshop/listing-markdown.ts'
import { measuresListing } from '../../workshop/measures-listing.ts'
import { brandBeside } from './brand.ts'
import type { Beside, MadeFile, MadeKind, PageOf, Refusal, Settings } from './engine.ts'
import { lessonAt } from './kept-lesson.ts'
import type { Themes } from './make-engine.ts'
import { handoutPage, pageOf } from './page-of.ts'
import { shownPictures } from './pictures.ts'

/** What files are made with, besides the lesson. */
export interface Making {
  readonly themes: Themes
  readonly beside: Beside
  /** Rules for the fonts of a page, with the fonts inside. */
  readonly fonts: string
}

/**
 * Files of a lesson. One with errors is not given out of hand: its numbers cannot be relied on.
 *
 * @returns several files when the lesson has several cards, each of which is cut by itself.
 */
export async function makeFiles(
  text: string,
  settings: Settings,
  what: MadeKind,
  making: Making,
): Promise<readonly MadeFile[] | Refusal> {
  const { filled } = lessonAt(text, settings)
  if (hasErrors(filled.findings))
    return {
      refused: 'This lesson has mistakes, so its numbers cannot be relied on',
      suggestion: 'Cure what the notes in the margin say, and print it then',
    }
  return kinds[what](filled, settings, making)
}

type Make = (lesson: FilledLesson, settings: Settings, making: Making) => Promise<MadeFile[]>

const exported =
  (kind: 'svg' | 'dxf' | 'fold', type: string): Make =>
  async (lesson) =>
    (await exportLesson(lesson, kind, true)).map(({ name, text }) => ({
      name: `${[slugOf(lesson), slug(name)].filter((part) => part !== '').join('-')}.${kind}`,
      type,
      data: text,
    }))

const kinds: Readonly<Record<MadeKind, Make>> = {
  async page(lesson, settings, { themes, beside, fonts }) {
    const codes = await codesFor(lesson)
    const { pictures } = shownPictures(lesson.tree, beside.pictures)
    const { brand } = await brandBeside(lesson.frontMatter.brand, beside)
    const theme = themes.handout(settings.theme)
    const { view } = handoutView(lesson, figuresOf(lesson), pictures, codes, theme.print.rooms)
    const page = handoutPage(lesson, view, brand, theme, settings)
    return [pageFile(slugOf(lesson), page, fonts)]
  },
  async template(lesson, settings, { themes, beside, fonts }) {
    const view = tracingView(lesson, settings.paper)
    const { brand } = await brandBeside(lesson.frontMatter.brand, beside)
    const { logo: _, ...withoutLogo } = brand ?? {}
    const { css, body } = themes.page<TracingView>(settings.theme, 'tracing')
    const page = pageOf(view, withoutLogo, { css, body: body(view) }, settings)
    return [pageFile(`${slugOf(lesson)}-templates`, page, fonts)]
  },
  async text(lesson) {
    const data = listingMarkdown(measuresListing(lesson))
    return [{ name: `${slugOf(lesson)}-measures.md`, type: 'text/markdown', data }]
  },
  svg: exported('svg', 'image/svg+xml'),
  dxf: exported('dxf', 'image/vnd.dxf'),
  fold: exported('fold', 'application/json'),
}

function pageFile(name: string, page: PageOf, fonts: string): MadeFile {
  const data = pageStandingAlone(page, { style: page.css, body: page.body, fonts })
  return { name: `${name}.html`, type: 'text/html', data }
}

/** The title as the name of a file. */
const slugOf = ({ frontMatter }: FilledLesson): string => slug(frontMatter.title) || 'lesson'
