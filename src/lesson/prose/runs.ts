import type { Nodes, Text } from 'mdast'
import type { MeasureNode } from '../nodes.ts'
import { placeOf, type Source, written } from '../source.ts'
import { alignment } from './alignment.ts'

/** A stretch of running text from one node. */
export interface Run {
  readonly text: string
  readonly measure?: MeasureNode
  /** Whether its words are meant as they are. */
  readonly meant?: boolean
  /** Offset in the file of each of its characters, and of its end; absent when it does not stand there as it is. */
  readonly offsets?: readonly number[]
  readonly position: Nodes['position']
}

/** The running text below a node, in order. Code and pictures are no words: a space stands for each. */
export function runsIn(node: Nodes, source: Source): Run[] {
  switch (node.type) {
    case 'text':
      return [textRun(node, source)]
    case 'measure':
      return [{ text: node.text ?? `{${node.value}}`, measure: node, position: node.position }]
    case 'break':
    case 'inlineCode':
    case 'image':
    case 'imageReference':
      return [{ text: ' ', position: node.position }]
    default:
      return 'children' in node ? node.children.flatMap((child) => runsIn(child as Nodes, source)) : []
  }
}

function textRun(node: Text, source: Source): Run {
  const start = placeOf(node.position).offset
  const map = start === undefined ? undefined : alignment(written(source, node.position), node.value)
  return {
    text: node.value.replace(/\s/g, ' '),
    position: node.position,
    ...(node.data?.meant && { meant: true }),
    ...(map && start !== undefined && { offsets: map.map((offset) => offset + start) }),
  }
}
