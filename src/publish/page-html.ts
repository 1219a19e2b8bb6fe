import { brandCss, type PageBrand } from './brand/page-brand.ts'
import { escapeHtml } from './html-text.ts'
import { htmlMark } from './our-marks.ts'
import { type PageShape, type Paper, pageCss } from './page-css.ts'
import { endLinks, trial } from './page-ends.ts'
import type { HandoutView } from './view.ts'

/** Nothing is fetched and nothing runs: styles stand in the page, fonts and pictures are data. */
export const contentPolicy =
  "default-src 'none'; style-src 'unsafe-inline'; font-src data:; img-src data:; base-uri 'none'; form-action 'none'"

/**
 * What holds in every theme: figures have measured their texts in a font as it comes, so whatever a theme does to its
 * words must not reach into them. And a PDF has no tag for a cell in which nothing is drawn, so that those behind it would
 * be told below the head of another column: something is.
 */
const base = `@media print{:where(td,th):empty{background-color:#fff}}
svg{word-spacing:0;letter-spacing:0;font-variant:normal;font-feature-settings:normal;text-transform:none}
.${trial} *{visibility:hidden!important}`

/** How a page is made. */
export interface PageSettings extends PageShape {
  readonly paper: Paper
}

/** The one program that may run in a page, with its hash as a content policy names it. */
export interface PageProgram {
  readonly script: string
  readonly hash: string
}

/** What the page needs to know besides its body. */
export type PageHead = Pick<HandoutView, 'title' | 'lang' | 'foot'> & { readonly brand?: PageBrand }

/** What a page looks like and says: style sheet of the theme, its body, and the rules for its fonts. */
export interface PageParts {
  readonly css: string
  readonly body: string
  readonly fonts: string
}

/**
 * One HTML page that stands alone, of its parts.
 *
 * @param settings what it is to be printed on, and how it lies there.
 */
export function pageHtml(
  view: PageHead,
  { css, body, fonts }: PageParts,
  { program, ...settings }: PageSettings & { readonly program?: PageProgram },
): string {
  const style = pageStyle(css, view, settings)
  return pageStandingAlone(view, { style, body: bodyText(body), fonts }, program)
}

/**
 * The same of a page whose style sheet and body are whole.
 *
 * @param style what `pageStyle` gives.
 * @param body what `bodyText` gives.
 */
export function pageStandingAlone(
  view: Pick<PageHead, 'title' | 'lang'>,
  { style, body, fonts }: { readonly style: string; readonly body: string; readonly fonts: string },
  program?: PageProgram,
): string {
  return `<!doctype html>
<html lang="${escapeHtml(view.lang)}">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${contentPolicy}${program ? `; script-src '${program.hash}'` : ''}">
${htmlMark}
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${escapeHtml(view.title)}</title>
<style>
${fonts}
</style>
<style>
${style}
</style>
</head>
<body>
${body}
${program ? `<script>${program.script}</script>\n` : ''}</body>
</html>
`
}

const end = '<div id="end"></div>'

/** All that stands in the body of a page: what it says, and the marks that tell where it falls on its pages. */
export function bodyText(said: string): string {
  const body = emptyCells(keepHeadingSpaces(said))
  return `${endLinks(`${body}${end}`)}\n${body}\n${end}`
}

/** The style sheet of a page, without its fonts. */
export const pageStyle = (
  css: string,
  head: Pick<PageHead, 'foot' | 'lang' | 'brand'>,
  { paper, ...shape }: PageSettings,
): string =>
  `${base}\n${styleText(css)}\n${head.brand ? `${brandCss(head.brand)}\n` : ''}${pageCss(head, paper, shape)}`

/** The same page in another setting of its theme. */
export const withSetting = (page: string, setting: string): string =>
  page.replace('<html ', `<html class="${setting}" `)

/**
 * A PDF's outline is made of what is drawn of its headings, and the space at which a line breaks is not drawn. So the
 * spaces of headings are such that stay, with a place to break behind each.
 */
const keepHeadingSpaces = (body: string): string =>
  body.replace(/<(h[1-4])\b[^>]*>.*?<\/\1>/gs, (heading) =>
    heading.replace(/<[^>]*>|[ \n]+/g, (found) => (found.startsWith('<') ? found : '\u00a0<wbr>')),
  )

/** Cells with nothing but spaces in them have nothing in them at all, so that the style sheet finds them. */
const emptyCells = (body: string): string => body.replace(/(<t[dh]\b[^>]*>)\s+(<\/t[dh]>)/g, '$1$2')

/** A style sheet cannot end its element. */
const styleText = (css: string): string => css.replace(/<\/(style)/gi, '<\\/$1')
