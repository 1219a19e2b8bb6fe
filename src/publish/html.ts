import { createHash } from 'node:crypto'
import { brandedBody } from './brand/page-brand.ts'
import { fontFaces } from './fonts.ts'
import { type PageHead, type PageSettings, pageHtml } from './page-html.ts'

/** A program as a content policy names it: this one may run, and no other. */
const hashOf = (script: string): string => `sha256-${createHash('sha256').update(script).digest('base64')}`

/**
 * One HTML page that stands alone: styles, fonts, figures and pictures are inside.
 *
 * @param view what the body is made of: a handout, or anything else that has a title, a language and a foot.
 * @param script the one program that may run in it.
 */
export async function handoutHtml<View extends PageHead>(
  view: View,
  theme: { readonly css: string; readonly body: (view: View) => string },
  { script, ...settings }: PageSettings & { readonly script?: string },
): Promise<string> {
  const body = brandedBody(theme.body(view), view.brand)
  const said = body.replace(/data:[^"]*/g, '') + view.foot.title + view.foot.print
  const fonts = await fontFaces(theme.css, said)
  const program = script === undefined ? undefined : { script, hash: hashOf(script) }
  return pageHtml(view, { css: theme.css, body, fonts }, { ...settings, ...(program && { program }) })
}
