import type { RootContent } from 'mdast'
import type { Section } from '../../workshop/listing.ts'
import { listingTree } from '../../workshop/listing-tree.ts'
import type { SizeChart } from '../../workshop/size-chart.ts'
import { sizeChartListing } from '../../workshop/size-chart-listing.ts'
import type { TextKind } from './kinds.ts'
import { text } from './phrases.ts'
import { bullets, heading } from './tree-parts.ts'

/** The chart of a lesson's sizes: as tables, or, where a table would fall apart, as a list for each size. */
export function sizeBlocks(chart: SizeChart, as: TextKind): RootContent[] {
  const { sections } = sizeChartListing(chart)
  const title = heading(2, 'All sizes')
  if (as === 'text') return [title, ...sections.flatMap(sizeLists)]
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

function sizeLists({ heading: unit, columns, rows, note }: Section): RootContent[] {
  const lists = columns
    .slice(1)
    .flatMap(({ head }, i): RootContent[] => [
      heading(3, `${head}, in ${unit.toLowerCase()}`),
      bullets(rows.flatMap(([name = '', ...cells]) => (cells[i] === '–' ? [] : [`${name}: ${cells[i]}`]))),
    ])
  return note ? [...lists, { type: 'paragraph', children: [text(note)] }] : lists
}
