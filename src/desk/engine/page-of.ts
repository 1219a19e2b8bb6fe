import { brandedBody, type PageBrand } from '../../publish/brand/page-brand.ts'
import { bodyText, type PageHead, type PageSettings, pageStyle } from '../../publish/page-html.ts'
import { localeOf } from '../../wording/locales.ts'
import { tongueOf } from '../../wording/tongue.ts'
import type { PageOf } from './engine.ts'

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
  const tongue = tongueOf(localeOf(lang) ?? 'en-GB')
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
