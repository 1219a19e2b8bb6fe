import { point } from '../../draw/ink.ts'
import { textWidth } from '../../draw/label.ts'
import type { Colour } from '../../lesson/brand/colour.ts'
import { escapeHtml } from '../html-text.ts'

/** What a workshop puts on a page. */
export interface PageBrand {
  readonly logo?: {
    /** The picture as a `data:` address. */
    readonly data: string
    /** What it says to those who do not see it; empty where nothing is known. */
    readonly alternative: string
  }
  readonly accent?: OnGrounds
  readonly second?: OnGrounds
  readonly footer?: string
}

/** A colour as it is read easily on paper, and on a dark screen. */
export interface OnGrounds {
  readonly onPaper: Colour
  readonly onDark: Colour
}

/** The body of a page with the logo at its head and, for a screen, where pages have no foot, the footer at its end. */
export function brandedBody(body: string, brand: PageBrand | undefined): string {
  if (!brand) return body
  const { logo, footer } = brand
  const head =
    logo && `\n<p class="brand-logo"><img src="${logo.data}" alt="${escapeHtml(logo.alternative)}"></p>`
  const foot = footer === undefined ? undefined : `<p class="brand-footer">${escapeHtml(footer)}</p>\n`
  const [begin, end] = [/<main\b[^>]*>/.exec(body), body.lastIndexOf('</main>')]
  if (!begin || end < 0) return `${head ?? ''}${body}${foot ?? ''}`
  const from = begin.index + begin[0].length
  return `${body.slice(0, from)}${head ?? ''}${body.slice(from, end)}${foot ?? ''}${body.slice(end)}`
}

/**
 * What a brand adds to a style sheet. Colours are told to the theme, which knows where they go; on the tint of a call-out
 * the second one may be too faint, so words are in ink there.
 */
export function brandCss({ logo, accent, second, footer }: PageBrand): string {
  const properties = [
    ...(accent ? [`--brand-accent:${accent.onPaper}`, `--brand-accent-dark:${accent.onDark}`] : []),
    ...(second ? [`--brand-second:${second.onPaper}`, `--brand-second-dark:${second.onDark}`] : []),
    ...(footer === undefined ? [] : [`--brand-lines:${largeLines(footer)}`]),
  ]
  return [
    `:root{${properties.join(';')}}`,
    ...(second ? ['.callout{--slate:var(--ink)}'] : []),
    ...(logo ? [logoCss] : []),
    ...(footer === undefined ? [] : [footerCss]),
  ].join('\n')
}

/** How many lines a footer takes in large print, in the middle of a foot: 18 pt, and 70 mm at least. */
const largeLines = (footer: string): number => Math.ceil(textWidth(footer, 18 * point) / 70)

/** The logo lies half in the margin above the first page, so that it takes little of the room of the lesson. */
const logoCss = `.brand-logo{margin:0 0 3mm}
.brand-logo img{display:block;height:9mm;max-width:60mm;object-fit:contain;object-position:left}
@page:first{margin-top:8mm}`

const footerCss = `.brand-footer{display:none}
@media screen{.sheet .brand-footer{display:block;margin-top:8mm;font-size:9pt;color:var(--slate)}}`
