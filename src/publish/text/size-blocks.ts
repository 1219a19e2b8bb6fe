import type { RootContent } from 'mdast'
import { listingTree } from '../../workshop/listing-tree.ts'
import type { ChartBlock, SizeChart } from '../../workshop/size-chart.ts'
import { rowsOf, sizeChartListing } from '../../workshop/size-chart-listing.ts'
import type { TextKind } from './kinds.ts'
import { text } from './phrases.ts'
import { bullets, heading } from './tree-parts.ts'

/** The chart of a lesson's sizes: as tables, or, where a table would fall apart, as a list for each size. */
export function sizeBlocks(chart: SizeChart, as: TextKind): RootContent[] {
  const { sections } = sizeChartListing(chart)
  const title = heading(2, chart.wording.say('text.all-sizes'))
  if (as === 'text') return [title, ...sizeLists(chart, sections.at(-1)?.note ?? '')]
  const { children } = listingTree({ title: '', intro: '', sections })
  return [title, ...children.slice(1).map(lower)]
}

/** A heading one level further down; measures as text, for here nothing sets them. */
function lower(node: RootContent): RootContent {
  if (node.type === 'heading') return { ...node, depth: 3 }
  if (node.type !== 'table') return node
  const children = node.children.map((row) => ({
    ...row,
    children: row.children.map((cell) => ({
      ...cell,
      children: cell.children.map((child) => (child.type === 'measure' ? text(child.text ?? '') : child)),
    })),
  }))
  return { ...node, children }
}

/** A list for each size, those of one unit together, and below them what the numbers leave out. */
function sizeLists({ blocks, units, wording }: SizeChart, note: string): RootContent[] {
  const listOf = (block: ChartBlock, at: number): RootContent =>
    bullets(
      rowsOf(block, wording).flatMap(({ name, cells }) =>
        cells[at] ? [wording.say('text.item', { name, text: cells[at] })] : [],
      ),
    )
  const lists = blocks.flatMap((block) =>
    units.flatMap((unit) =>
      block.columns.flatMap((column, at) => {
        const size = blocks.length > 1 ? `${block.card}, ${column.label}` : column.label
        return column.unit === unit
          ? [heading(3, wording.say('chart.size-in', { unit, size })), listOf(block, at)]
          : []
      }),
    ),
  )
  return note === '' ? lists : [...lists, { type: 'paragraph', children: [text(note)] }]
}
