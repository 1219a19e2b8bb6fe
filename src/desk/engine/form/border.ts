import type { BorderShape } from '../form.ts'
import { isGroup, isList, type Plain } from './plain.ts'

const edges = ['left', 'right', 'top', 'bottom'] as const

/** Which way a border is written: `mixed` with keys for single edges and for several. */
export function shapeOf(border: Plain): BorderShape | 'mixed' {
  if (!isGroup(border)) return isList(border) ? 'four' : 'one'
  const keys = [...border.keys()]
  if (keys.every((key) => key === 'sides' || key === 'ends')) return 'two'
  return keys.every((key) => (edges as readonly string[]).includes(key)) ? 'four' : 'mixed'
}

/** The same border, written another way: what the new way cannot say is the left and the top edge's. */
export function borderAs(border: Plain, shape: BorderShape): Plain {
  if (shapeOf(border) === shape && border !== undefined) return border
  const [left, right, top, bottom] = edges.map((edge, i) => edgeOf(border, edge, i))
  if (shape === 'one') return left === '0' ? top : left
  if (shape === 'two')
    return new Map<string, Plain>([
      ['sides', left],
      ['ends', top],
    ])
  return new Map<string, Plain>([
    ['left', left],
    ['right', right],
    ['top', top],
    ['bottom', bottom],
  ])
}

function edgeOf(border: Plain, edge: (typeof edges)[number], place: number): Plain {
  const group = place < 2 ? 'sides' : 'ends'
  const said = isGroup(border)
    ? (border.get(edge) ?? border.get(group))
    : isList(border)
      ? border[place]
      : border
  return said ?? '0'
}
