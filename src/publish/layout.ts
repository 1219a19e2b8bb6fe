import type { Layout } from './setting.ts'

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
