import type { PDFDict, PDFDocument, PDFObject, PDFRef } from '@cantoo/pdf-lib'
import type { Moved, Moves } from './impose.ts'

type Library = typeof import('@cantoo/pdf-lib')

/**
 * Makes the tags of a PDF follow its pages. A piece of content is known by its number within a page; where the page has
 * become a form, the tag names the sheet and the form as well (ISO 32000-1, 14.7.4.2: `Pg`, `Stm`). The order of the tags,
 * which is the order of reading, stays.
 */
export function moveStructure(document: PDFDocument, moves: Moves, library: Library): void {
  const { PDFDict, PDFName } = library
  for (const [, object] of document.context.enumerateIndirectObjects()) {
    if (object instanceof PDFDict && object.get(PDFName.of('Type')) === PDFName.of('StructElem'))
      moveElement(object, moves, library)
  }
  nameParents(document, moves, library)
}

function moveElement(element: PDFDict, moves: Moves, library: Library): void {
  const { PDFArray, PDFName } = library
  const key = PDFName.of('K')
  const own = movedFrom(element.get(PDFName.of('Pg')), moves)
  const kids = element.get(key)
  if (kids instanceof PDFArray)
    for (let i = 0; i < kids.size(); i++) kids.set(i, moveKid(kids.get(i), element, own, moves, library))
  else if (kids) element.set(key, moveKid(kids, element, own, moves, library))
  if (own) element.set(PDFName.of('Pg'), own.sheet)
}

/** One child of an element: content by its number, content of another page, a link, or an element, which stays. */
function moveKid(
  kid: PDFObject,
  { context }: PDFDict,
  own: Moved | undefined,
  moves: Moves,
  { PDFDict, PDFName, PDFNumber }: Library,
): PDFObject {
  if (kid instanceof PDFNumber)
    return own ? context.obj({ Type: 'MCR', Pg: own.sheet, Stm: own.form, MCID: kid.asNumber() }) : kid
  const found = context.lookup(kid)
  if (!(found instanceof PDFDict)) return kid
  const type = found.get(PDFName.of('Type'))
  const moved = movedFrom(found.get(PDFName.of('Pg')), moves) ?? own
  if (!moved || (type !== PDFName.of('MCR') && type !== PDFName.of('OBJR'))) return kid
  found.set(PDFName.of('Pg'), moved.sheet)
  if (type === PDFName.of('MCR')) found.set(PDFName.of('Stm'), moved.form)
  return kid
}

const movedFrom = (page: PDFObject | undefined, moves: Moves): Moved | undefined =>
  page && 'tag' in page ? moves.get((page as PDFRef).tag) : undefined

/**
 * Some readers find the tags of a page only through a list of the page itself. A sheet has no content of its own that its
 * list could be about, so it has the elements of both its halves.
 */
function nameParents(document: PDFDocument, moves: Moves, library: Library): void {
  const { PDFArray, PDFDict, PDFName, PDFNumber, PDFStream } = library
  const { context, catalog } = document
  const tree = catalog.lookupMaybe(PDFName.of('StructTreeRoot'), PDFDict)
  const numbers = tree
    ?.lookupMaybe(PDFName.of('ParentTree'), PDFDict)
    ?.lookupMaybe(PDFName.of('Nums'), PDFArray)
  if (!tree || !numbers) return
  const listed = new Map<number, PDFObject>()
  for (let i = 0; i + 1 < numbers.size(); i += 2)
    listed.set(numbers.lookup(i, PDFNumber).asNumber(), numbers.get(i + 1))
  let next = Math.max(-1, ...listed.keys()) + 1
  const lists = new Map<PDFRef, PDFObject[]>()
  for (const { sheet, form } of moves.values()) {
    const parents = context.lookup(form, PDFStream).dict.lookupMaybe(PDFName.of('StructParents'), PDFNumber)
    const list = parents && context.lookup(listed.get(parents.asNumber()))
    if (list instanceof PDFArray) lists.set(sheet, [...(lists.get(sheet) ?? []), ...list.asArray()])
  }
  for (const [sheet, elements] of lists) {
    context.lookup(sheet, PDFDict).set(PDFName.of('StructParents'), PDFNumber.of(next))
    numbers.push(PDFNumber.of(next))
    numbers.push(context.obj(elements))
    next++
  }
  tree.set(PDFName.of('ParentTreeNextKey'), PDFNumber.of(next))
}
