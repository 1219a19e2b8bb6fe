import { constants, inflateSync } from 'node:zlib'
import { getDocument, type PDFDocumentProxy } from 'pdfjs-dist/legacy/build/pdf.mjs'

/** A PDF, read by something other than what made it. */
export const openPdf = (data: Uint8Array): Promise<PDFDocumentProxy> =>
  getDocument({ data: new Uint8Array(data), useSystemFonts: false, verbosity: 0 }).promise

/**
 * The text of each page, in its order in the file, with all kinds of spaces as plain ones. The reader takes the bar of a
 * fraction from the font, where it is U+2044; that there is a `/` behind it is another test.
 */
export async function pageTexts(pdf: PDFDocumentProxy): Promise<string[]> {
  return eachPage(pdf, async (page) => {
    const { items } = await page.getTextContent()
    return items
      .map((item) => ('str' in item ? item.str + (item.hasEOL ? ' ' : '') : ''))
      .join('')
      .replace(/\s+/g, ' ')
      .replaceAll('\u2044', '/')
  })
}

/** Page sizes in points. */
export const pageSizes = (pdf: PDFDocumentProxy): Promise<[width: number, height: number][]> =>
  eachPage(pdf, async (page) => {
    const [left = 0, bottom = 0, right = 0, top = 0] = page.view
    return [right - left, top - bottom]
  })

export interface Tag {
  readonly role: string
  readonly alt?: string
}

/** The structure of all pages, flat, in reading order. */
export async function tags(pdf: PDFDocumentProxy): Promise<Tag[]> {
  const trees = await eachPage(pdf, (page) => page.getStructTree())
  const flat = (node: unknown): Tag[] => {
    const { role, alt, children = [] } = node as { role?: string; alt?: string; children?: unknown[] }
    const own = role === undefined ? [] : [{ role, ...(alt !== undefined && { alt }) }]
    return [...own, ...children.flatMap(flat)]
  }
  return trees.flatMap(flat)
}

/** What stands behind glyphs that show something else, by how often: their `ActualText`. */
export function actualTexts(data: Uint8Array): Map<string, number> {
  const bytes = Buffer.from(data)
  const found = new Map<string, number>()
  for (const { index, 0: mark } of bytes
    .toString('latin1')
    .matchAll(/\/Filter \/FlateDecode[^>]*>>\s*stream\r?\n/g)) {
    const content = inflateSync(bytes.subarray(index + mark.length), { finishFlush: constants.Z_SYNC_FLUSH })
    for (const [, text = ''] of content.toString('latin1').matchAll(/\/ActualText \(([^)]*)\)/g))
      found.set(text, (found.get(text) ?? 0) + 1)
  }
  return found
}

async function eachPage<T>(
  pdf: PDFDocumentProxy,
  of: (page: Awaited<ReturnType<PDFDocumentProxy['getPage']>>) => Promise<T>,
): Promise<T[]> {
  const found: T[] = []
  for (let i = 1; i <= pdf.numPages; i++) found.push(await of(await pdf.getPage(i)))
  return found
}
