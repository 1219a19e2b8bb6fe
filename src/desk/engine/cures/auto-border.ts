import { type Entry, readYaml } from '../../../card/yaml.ts'
import type { Healer } from '../cures.ts'

const groups: Readonly<Record<string, string>> = {
  left: 'sides',
  right: 'sides',
  top: 'ends',
  bottom: 'ends',
}

/** `auto` for the edge of a layer that would buckle, where its border is written for that edge. */
export const autoBorder: Healer = ({ message, from }, { lesson }) => {
  const [, edge = '', name = ''] = /^The (\w+) edge of `([^`]+)`/.exec(message) ?? []
  for (const block of lesson.cards) {
    const layers = readYaml(block).top.value.fields.get('layers')?.value
    const layer = layers?.kind === 'map' ? layers.fields.get(name) : undefined
    if (layer?.keyPlace.offset !== from || layer.value.kind !== 'map') continue
    const border = layer.value.fields.get('border')?.value
    const entry = entryOf(border, edge)
    const { offset, end } = entry?.place ?? {}
    if (entry?.kind !== 'text' || offset === undefined || end === undefined) return []
    return [{ words: 'Write `auto` for that border', edits: [{ from: offset, to: end, insert: 'auto' }] }]
  }
  return []
}

function entryOf(border: Entry | undefined, edge: string): Entry | undefined {
  if (border?.kind === 'text') return border
  if (border?.kind === 'list') return border.items[['left', 'right', 'top', 'bottom'].indexOf(edge)]
  if (border?.kind !== 'map') return undefined
  return (border.fields.get(edge) ?? border.fields.get(groups[edge] ?? ''))?.value
}
