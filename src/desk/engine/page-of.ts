import type { FilledLesson } from '../../lesson/lesson.ts'
import { brandedBody, type PageBrand } from '../../publish/brand/page-brand.ts'
import { bodyText, type PageHead, type PageSettings, pageStyle } from '../../publish/page-html.ts'
import type { ThemePrint } from '../../publish/theme-print.ts'
import { type HandoutView, shortPrintWords } from '../../publish/view.ts'
import { tongueFor } from '../../wording/tongue.ts'
import type { PageOf, Settings } from './engine.ts'
import type { PageTheme } from './look.ts'

/**
 * A page that the desk shows, as it prints.
 *
 * @param css style sheet of the theme.
 * @param body what its template says.
 */
export function pageOf(
  { title, lang, foot }: Omit<PageHead, 'brand'>,
  brand: PageBrand | undefined,
  { css, body }: { readonly css: string; readonly body: string },
  { paper, half = false }: PageSettings,
): PageOf {
  const tongue = tongueFor(lang)
  return {
    lang,
    title,
    css: pageStyle(css, { foot, lang, ...(brand && { brand }) }, { paper, half }),
    body: bodyText(brandedBody(body, brand)),
    foot: {
      ...foot,
      ...(brand?.footer !== undefined && { own: brand.footer }),
      number: tongue.say('handout.page-of', { page: '{page}', pages: '{pages}' }),
    },
  }
}

/** The page of a handout, as a theme lays it on paper. */
export function handoutPage(
  lesson: Pick<FilledLesson, 'cards' | 'wording'>,
  view: HandoutView,
  brand: PageBrand | undefined,
  { css, body, print }: PageTheme,
  { paper }: Pick<Settings, 'paper'>,
): PageOf {
  const head = { ...view, foot: footOf(lesson, view, print) }
  const page = pageOf(head, brand, { css, body: body(view) }, { paper, half: print.pages === 'half' })
  return { ...page, ...(print.fit === 'one page' && { onePage: true }) }
}

/** What stands in the foot of a handout: which print it is, whole or short. */
const footOf = (
  lesson: Pick<FilledLesson, 'cards' | 'wording'>,
  { foot }: Pick<HandoutView, 'foot'>,
  print: ThemePrint,
): HandoutView['foot'] =>
  print.foot === 'short' ? { ...foot, print: '', beside: shortPrintWords(lesson) } : foot
