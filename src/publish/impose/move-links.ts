import type { PDFArray, PDFDocument, PDFObject, PDFPage } from '@cantoo/pdf-lib'
import type { Moves } from './impose.ts'

type Library = typeof import('@cantoo/pdf-lib')

/** Makes the outline, the links and the places that they lead to follow the pages of a PDF. */
export function moveLinks(
  document: PDFDocument,
  pages: readonly PDFPage[],
  moves: Moves,
  library: Library,
): void {
  moveAnnotations(pages, moves, library)
  for (const [, object] of document.context.enumerateIndirectObjects()) moveTargets(object, moves, library)
}

/** Links are areas of a page: they go to the sheet. */
function moveAnnotations(
  pages: readonly PDFPage[],
  moves: Moves,
  { PDFArray, PDFDict, PDFName, PDFNumber }: Library,
): void {
  for (const { node, ref } of pages) {
    const moved = moves.get(ref.tag)
    const annotations = node.Annots()?.asArray() ?? []
    if (!moved || annotations.length === 0) continue
    const sheet = node.context.lookup(moved.sheet, PDFDict)
    const there = sheet.lookupMaybe(PDFName.of('Annots'), PDFArray)?.asArray() ?? []
    sheet.set(PDFName.of('Annots'), node.context.obj([...there, ...annotations]))
    for (const annotation of annotations) {
      const dict = node.context.lookup(annotation, PDFDict)
      if (dict.has(PDFName.of('P'))) dict.set(PDFName.of('P'), moved.sheet)
      const corners = dict.lookup(PDFName.of('Rect'), PDFArray)
      for (const i of [0, 2]) {
        const x = corners.lookup(i, PDFNumber).asNumber()
        corners.set(i, PDFNumber.of(x + moved.right))
      }
    }
  }
}

/** A place is a list that begins with a page: `[page /XYZ x y zoom]`. They stand in all kinds of objects. */
function moveTargets(object: PDFObject, moves: Moves, library: Library): void {
  const { PDFArray, PDFDict, PDFStream } = library
  if (object instanceof PDFArray) {
    moveTarget(object, moves, library)
    for (const item of object.asArray()) moveTargets(item, moves, library)
  } else if (object instanceof PDFDict)
    for (const value of object.values()) moveTargets(value, moves, library)
  else if (object instanceof PDFStream) moveTargets(object.dict, moves, library)
}

function moveTarget(place: PDFArray, moves: Moves, { PDFName, PDFNumber, PDFRef }: Library): void {
  if (place.size() < 2) return
  const page = place.get(0)
  const moved = page instanceof PDFRef ? moves.get(page.tag) : undefined
  if (!moved || !(place.get(1) instanceof PDFName)) return
  place.set(0, moved.sheet)
  const x = place.size() > 2 ? place.get(2) : undefined
  if (place.get(1) === PDFName.of('XYZ') && x instanceof PDFNumber)
    place.set(2, PDFNumber.of(x.asNumber() + moved.right))
}
