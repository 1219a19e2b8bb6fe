import { leafAt, rectsOf } from './leaves.ts'
import type { PageBox } from './printed.ts'

const mark = 'again'
/** More leaves than this no table of a lesson takes. */
const most = 30
const copied = [
  'font',
  'color',
  'padding',
  'text-align',
  'vertical-align',
  'border-bottom',
  'width',
  'white-space',
] as const

/** Takes the repeated heads of tables out again. */
export function withoutRepeats(doc: Document): void {
  for (const row of doc.querySelectorAll(`tr.${mark}`)) row.remove()
}

/** A table that goes on on another leaf has its head there again: a browser does so in print, but not in columns. */
export function repeatHeads(doc: Document, box: PageBox): void {
  withoutRepeats(doc)
  for (const table of doc.querySelectorAll('table')) {
    const head = table.tHead?.rows[0]
    if (!head) continue
    for (let i = 0; i < most; i++) {
      const first = firstOnLeaf(table, box)
      if (!first) break
      first.before(copyOf(head))
    }
  }
}

/** The first row of a table that begins a leaf without a head above it. */
function firstOnLeaf(table: HTMLTableElement, box: PageBox): HTMLTableRowElement | undefined {
  const rows = [...table.rows]
  const leaves = rows.map((row) => leafAt(rectsOf(row)[0]?.left ?? 0, box))
  return rows.find(
    (row, i) =>
      i > 0 &&
      (leaves[i] ?? 0) > (leaves[i - 1] ?? 0) &&
      !row.classList.contains(mark) &&
      !rows[i - 1]?.classList.contains(mark),
  )
}

function copyOf(head: HTMLTableRowElement): HTMLTableRowElement {
  const row = head.cloneNode(true) as HTMLTableRowElement
  row.className = mark
  row.setAttribute('aria-hidden', 'true')
  row.style.setProperty('break-before', 'column')
  row.style.setProperty('break-after', 'avoid')
  for (const [i, cell] of [...row.cells].entries()) {
    const like = head.cells[i]
    const style = like && head.ownerDocument.defaultView?.getComputedStyle(like)
    cell.removeAttribute('id')
    for (const name of style ? copied : []) cell.style.setProperty(name, style?.getPropertyValue(name) ?? '')
  }
  return row
}
