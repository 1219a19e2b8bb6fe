import { numberIn } from '../length/length.ts'
import { sheetSize } from '../length/paper.ts'
import { tongueFor } from '../wording/tongue.ts'
import type { PageHead } from './page-html.ts'

/** The papers that a handout is printed on. */
export const papers = { a4: 'A4', letter: 'Letter' } as const
export type Paper = keyof typeof papers

/** How a page lies on a sheet of paper: whether on its long side, and whether it is half of one that lies so. */
export interface PageShape {
  /** Whether to leave room for holes on the left. */
  readonly punched?: boolean
  readonly lying?: boolean
  readonly half?: boolean
}

/** Width and height of a paper in mm. */
export function paperSize(paper: Paper): { width: number; height: number } {
  const size = sheetSize(papers[paper])
  if (!size)
    throw new RangeError(`Unexpected paper \`${paper}\`, expected ${Object.keys(papers).join(' or ')}`)
  return { width: numberIn(size.width, 'mm'), height: numberIn(size.height, 'mm') }
}

function lyingSize(paper: Paper): { width: number; height: number } {
  const { width, height } = paperSize(paper)
  return { width: height, height: width }
}

/** Width and height in mm of a page of which two stand beside each other on a paper. */
export function halfSize(paper: Paper): { width: number; height: number } {
  const { width, height } = lyingSize(paper)
  return { width: width / 2, height }
}

/**
 * What the page box says: its size, and in its foot the lesson, which print this is, and the page. How that looks is up
 * to the theme's own `@page`.
 */
export function pageCss(
  { foot, lang, brand }: Pick<PageHead, 'foot' | 'lang' | 'brand'>,
  paper: Paper,
  { punched = false, lying = false, half = false }: PageShape = {},
): string {
  const { width, height } = half ? halfSize(paper) : lying ? lyingSize(paper) : paperSize(paper)
  return `@page{size:${width}mm ${height}mm;${punched ? 'margin-left:24mm;' : ''}@bottom-left{content:${quoted(foot.title)}}${middleOf(foot.print, brand?.footer)}@bottom-right{content:${foot.beside ? `${quoted(`${foot.beside} · `)} ` : ''}${pageOfPages(lang)}}}`
}

/** What stands in the middle of a foot: which print it is, and below that the workshop's own line. */
function middleOf(print: string, own = ''): string {
  const lines = [print, own].filter((line) => line !== '')
  // A box that is not there leaves its room to the others.
  if (lines.length === 0) return ''
  const more = lines.length > 1 ? ';white-space:pre-line;text-align:center' : ''
  return `@bottom-center{content:${lines.map(quoted).join('"\\a"')}${more}}`
}

/** `page 3 of 8`, with what counts the pages in it. */
function pageOfPages(lang: string): string {
  const [page, pages] = ['\ue000', '\ue001']
  const words = tongueFor(lang).say('handout.page-of', { page, pages })
  return words
    .split(/([\ue000\ue001])/)
    .filter((part) => part !== '')
    .map((part) => (part === page ? 'counter(page)' : part === pages ? 'counter(pages)' : quoted(part)))
    .join(' ')
}

/** A text as a CSS string. Whatever could end the string, the rule or the style sheet is written as its number. */
export const quoted = (text: string): string =>
  `"${text.replace(/[^\p{L}\p{N} .,;:!?×()–—’‘“”\u00a0\u202f\u2044-]/gu, (c) => `\\${(c.codePointAt(0) ?? 0).toString(16)} `)}"`
