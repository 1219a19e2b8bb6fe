/**
 * How the text of a print falls on its pages, read off the PDF. In the page, elements whose `id` starts with `end` mark
 * where something that belongs together ends, and a hidden link to each makes Chromium say in the PDF where they came
 * to stand.
 */
export interface Layout {
  readonly pages: number
  /** Share of the last page's height that is above the end of the text. */
  readonly lastFill: number
  /**
   * Share of the height that is left over below the last end, of each page but the last; the largest first. Pages
   * without an end of anything, such as those in the middle of a long list, are not counted.
   */
  readonly gaps: readonly number[]
}

/** Class of the root while it is only tried out where things fall. */
export const trial = 'trial'

/** The links that make ends known, for a body that has some. */
export const endLinks = (body: string): string =>
  [...body.matchAll(/ id="(end[\w-]*)"/g)].map(([, id]) => `<a href="#${id}" hidden></a>`).join('')

/** Page objects of a PDF as Chromium makes it, by their number, with their heights in points. */
function pageHeights(text: string): Map<string, number> {
  const pages = new Map<string, number>()
  for (const [object, number = ''] of text.matchAll(/\b(\d+) 0 obj\s*<<\/Type \/Page\b(?!s).*?endobj/gs))
    pages.set(number, Number(/\/MediaBox \[\S+ \S+ \S+ ([^\]]+)\]/.exec(object)?.[1]))
  return pages
}

/** Reads the layout off a PDF. Its objects stand in it as plain text; only page contents and fonts are packed. */
export function layoutOf(pdf: Uint8Array): Layout {
  const text = Buffer.from(pdf.buffer, pdf.byteOffset, pdf.byteLength).toString('latin1')
  const heights = pageHeights(text)
  const lowest = new Map<string, number>()
  let last = ''
  for (const [, name, page = '', y] of text.matchAll(/\/(end[\w-]*) \[(\d+) 0 R \/XYZ \S+ (\S+) /g)) {
    const height = heights.get(page)
    if (height === undefined) continue
    lowest.set(page, Math.max(lowest.get(page) ?? 0, 1 - Number(y) / height))
    if (name === 'end') last = page
  }
  const gaps = [...lowest].filter(([page]) => page !== last).map(([, fill]) => 1 - fill)
  return { pages: heights.size, lastFill: lowest.get(last) ?? 1, gaps: gaps.sort((a, b) => b - a) }
}

/** A last page that is filled less than this looks like a mistake, and costs a sheet for every reader. */
const leastFill = 0.35
/** Below the text of a page there is its margin, and what the next step would not fit in. */
const usualGap = 0.2

/** How far a layout is from what a careful hand would make: 0 is as it should be. A page more weighs most. */
export const flaws = ({ lastFill, gaps, pages }: Layout): number =>
  (pages > 1 && lastFill < leastFill ? 0.2 + leastFill - lastFill : 0) +
  gaps.reduce((sum, gap) => sum + Math.max(0, gap - usualGap), 0)

/** A stage on a page of its own is no left-over, however short, and the page before it is meant to end early. */
export const withStageApart = (layout: Layout): Layout => ({
  ...layout,
  lastFill: layout.lastFill < 0.2 ? layout.lastFill : 1,
  gaps: layout.gaps.slice(1),
})
