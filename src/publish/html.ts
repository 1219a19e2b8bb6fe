import { createHash } from 'node:crypto'
import { fontFaces } from './fonts.ts'
import { escapeHtml } from './html-text.ts'
import { endLinks, trial } from './layout.ts'
import { type Paper, pageCss } from './page-css.ts'
import type { Setting } from './pdf.ts'
import type { HandoutView } from './view.ts'
import { htmlMark } from './write.ts'

/** Nothing is fetched and nothing runs: styles stand in the page, fonts and pictures are data. */
export const contentPolicy =
  "default-src 'none'; style-src 'unsafe-inline'; font-src data:; img-src data:; base-uri 'none'; form-action 'none'"

/**
 * What holds in every theme: figures have measured their texts in a font as it comes, so whatever a theme does to its
 * words must not reach into them.
 */
const base = `svg{word-spacing:0;letter-spacing:0;font-variant:normal;font-feature-settings:normal;text-transform:none}
.${trial} *{visibility:hidden!important}`

/** How a page is made. */
export interface PageSettings {
  readonly paper: Paper
  readonly punched?: boolean
  readonly lying?: boolean
  readonly script?: string
}

/** A program as a content policy names it: this one may run, and no other. */
const hashOf = (script: string): string => `sha256-${createHash('sha256').update(script).digest('base64')}`

/** What the page needs to know besides its body. */
export type PageHead = Pick<HandoutView, 'title' | 'lang' | 'foot'>

/**
 * One HTML page that stands alone: styles, fonts, figures and pictures are inside.
 *
 * @param view what the body is made of: a handout, or anything else that has a title, a language and a foot.
 * @param paper what it is to be printed on.
 * @param punched whether to leave room for holes on the left.
 * @param lying whether the paper lies on its long side.
 * @param script the one program that may run in it.
 */
export async function handoutHtml<View extends PageHead>(
  view: View,
  theme: { readonly css: string; readonly body: (view: View) => string },
  { paper, punched = false, lying = false, script }: PageSettings,
): Promise<string> {
  const body = keepHeadingSpaces(theme.body(view))
  const said = body.replace(/data:[^"]*/g, '') + view.foot.title + view.foot.print
  const fonts = await fontFaces(theme.css, said)
  return `<!doctype html>
<html lang="${escapeHtml(view.lang)}">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${contentPolicy}${script === undefined ? '' : `; script-src '${hashOf(script)}'`}">
${htmlMark}
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${escapeHtml(view.title)}</title>
<style>
${fonts}
</style>
<style>
${base}
${styleText(theme.css)}
${pageCss(view.foot, paper, punched, lying)}
</style>
</head>
<body>
${endLinks(`${body}${end}`)}
${body}
${end}
${script === undefined ? '' : `<script>${script}</script>\n`}</body>
</html>
`
}

const end = '<div id="end"></div>'

/** The same page in another setting of its theme. */
export const withSetting = (page: string, setting: Setting): string =>
  page.replace('<html ', `<html class="${setting}" `)

/**
 * A PDF's outline is made of what is drawn of its headings, and the space at which a line breaks is not drawn. So the
 * spaces of headings are such that stay, with a place to break behind each.
 */
const keepHeadingSpaces = (body: string): string =>
  body.replace(/<(h[1-4])\b[^>]*>.*?<\/\1>/gs, (heading) =>
    heading.replace(/<[^>]*>|[ \n]+/g, (found) => (found.startsWith('<') ? found : '\u00a0<wbr>')),
  )

/** A style sheet cannot end its element. */
const styleText = (css: string): string => css.replace(/<\/(style)/gi, '<\\/$1')
