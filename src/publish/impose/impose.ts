import type { PDFDocument, PDFPage, PDFRef } from '@cantoo/pdf-lib'
import { OutsideError } from '../problems.ts'
import { moveLinks } from './move-links.ts'
import { moveStructure } from './move-structure.ts'
import { type Sheeting, sheetSides } from './sheet-order.ts'

type Library = typeof import('@cantoo/pdf-lib')

/** Where a page of the document has gone: onto a sheet, as a drawing of its own, so far to the right. */
export interface Moved {
  readonly sheet: PDFRef
  readonly form: PDFRef
  /** In points. */
  readonly right: number
}

/** Pages by the tag of their reference in the file. */
export type Moves = ReadonlyMap<string, Moved>

/**
 * Puts the pages of a tagged PDF on sheets, two beside each other, and keeps its tags, its outline and its links.
 *
 * Each page becomes a form, which is a drawing of its own (ISO 32000-1, 8.10), so nothing in it is touched; whatever
 * pointed to the page then points to the sheet and to that form. A program that prints a booklet is told to turn the
 * sheets on their short edge.
 *
 * @throws OutsideError when a page is put together as no browser that we know does it.
 */
export async function imposePdf(pdf: Uint8Array, sheeting: Exclude<Sheeting, 'single'>): Promise<Uint8Array> {
  const library = await import('@cantoo/pdf-lib')
  const { Duplex, PDFDocument } = library
  const document = await PDFDocument.load(pdf, { updateMetadata: false })
  const pages = document.getPages()
  const forms = pages.map((page) => formOf(page, library))
  const moves = new Map<string, Moved>()
  for (const { left, right } of sheetSides(pages.length, sheeting)) {
    const sides = [left, right].map((n) =>
      n === null ? undefined : { page: pages[n - 1], form: forms[n - 1] },
    )
    const { ref, width } = sheetOf(
      document,
      sides.map((side) => side?.form),
      pages,
      library,
    )
    for (const [i, side] of sides.entries())
      if (side?.page && side.form)
        moves.set(side.page.ref.tag, { sheet: ref, form: side.form, right: i * width })
  }
  moveStructure(document, moves, library)
  moveLinks(document, pages, moves, library)
  for (const page of pages) {
    document.removePage(0)
    document.context.delete(page.ref)
  }
  if (sheeting === 'booklet')
    document.catalog.getOrCreateViewerPreferences().setDuplex(Duplex.DuplexFlipShortEdge)
  return document.save({ useObjectStreams: false })
}

/** What a page draws, made a form: the stream itself stays as it is. */
function formOf({ node }: PDFPage, { PDFName, PDFRef, PDFStream }: Library): PDFRef {
  const ref = node.get(PDFName.of('Contents'))
  const stream = node.context.lookup(ref)
  if (!(ref instanceof PDFRef) || !(stream instanceof PDFStream))
    throw new OutsideError(
      'The pages that the browser printed cannot be put on sheets',
      'Name another browser in FOLDLORE_BROWSER, or take a theme with a page on each sheet',
    )
  stream.dict.set(PDFName.of('Type'), PDFName.of('XObject'))
  stream.dict.set(PDFName.of('Subtype'), PDFName.of('Form'))
  stream.dict.set(PDFName.of('BBox'), node.MediaBox())
  for (const key of ['Resources', 'StructParents']) {
    const value = node.get(PDFName.of(key))
    if (value) stream.dict.set(PDFName.of(key), value)
  }
  return ref
}

/** A new sheet with two forms on it, and the width of one of its halves. */
function sheetOf(
  document: PDFDocument,
  forms: readonly (PDFRef | undefined)[],
  [first]: readonly PDFPage[],
  { PDFName }: Library,
): { ref: PDFRef; width: number } {
  const { width = 0, height = 0 } = first?.getSize() ?? {}
  const sheet = document.addPage([2 * width, height])
  const named = forms.flatMap((form, i) => (form ? [{ form, name: `Half${i}`, right: i * width }] : []))
  const drawn = named.map(({ name, right }) => `q 1 0 0 1 ${right} 0 cm /${name} Do Q`).join('\n')
  const { context } = document
  sheet.node.set(PDFName.of('Contents'), context.register(context.stream(drawn)))
  sheet.node.set(
    PDFName.of('Resources'),
    context.obj({ XObject: Object.fromEntries(named.map(({ name, form }) => [name, form])) }),
  )
  sheet.node.set(PDFName.of('Tabs'), PDFName.of('S'))
  return { ref: sheet.ref, width }
}
