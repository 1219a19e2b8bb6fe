import type { AlignType, PhrasingContent, Root, RootContent, TableRow } from 'mdast'
import type {} from '../lesson/nodes.ts'
import type { Column, Listing, Section } from './listing.ts'

/** A list as a Markdown tree, its measures as the `measure` nodes of a filled lesson. */
export function listingTree({ title, intro, sections }: Listing): Root {
  const head: RootContent[] = [{ type: 'heading', depth: 1, children: [text(title)] }]
  if (intro !== '') head.push({ type: 'paragraph', children: [text(intro)] })
  return { type: 'root', children: [...head, ...sections.flatMap(sectionTree)] }
}

function sectionTree({ heading, columns, rows, note }: Section): RootContent[] {
  const align = columns.map((c): AlignType => (c.kind === 'count' || c.kind === 'amount' ? 'right' : null))
  const head = row(columns.map((c) => text(c.head)))
  const body = rows.map((cells) => row(columns.map((c, i) => content(cells[i] ?? '', c))))
  return [
    { type: 'heading', depth: 2, children: [text(heading)] },
    { type: 'table', align, children: [head, ...body] },
    ...(note ? [{ type: 'paragraph' as const, children: [text(note)] }] : []),
  ]
}

const row = (cells: readonly PhrasingContent[]): TableRow => ({
  type: 'tableRow',
  children: cells.map((cell) => ({ type: 'tableCell', children: [cell] })),
})

/** A cell of a column of measures may still be words, such as `a little`. */
const content = (cell: string, { kind }: Column): PhrasingContent =>
  kind === 'measure' && /^\d/.test(cell) ? { type: 'measure', value: cell, text: cell } : text(cell)

const text = (value: string): PhrasingContent => ({ type: 'text', value })
