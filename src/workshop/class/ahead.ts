import type { Nodes } from 'mdast'
import type { FilledLesson } from '../../lesson/lesson.ts'
import { plainText } from '../../lesson/plain-text.ts'
import { oneLine } from './one-line.ts'

/** What a lesson says to have ready before the class, and the step that needs it. */
export interface ToHaveReady {
  readonly lesson: string
  readonly step?: number
  readonly words: string
}

/** What stands in `:::ahead`, with the step that it belongs to. */
export function aheadIn({ tree, frontMatter }: FilledLesson): ToHaveReady[] {
  const found: ToHaveReady[] = []
  const walk = (node: Nodes, step: number | undefined): void => {
    const own = node.type === 'listItem' ? (node.data?.step ?? step) : step
    if (node.type === 'callout' && node.kind === 'ahead')
      found.push({
        lesson: frontMatter.title,
        ...(own !== undefined && { step: own }),
        words: oneLine(node.children.map(plainText).join(' ')),
      })
    else if ('children' in node) for (const child of node.children) walk(child, own)
  }
  walk(tree, undefined)
  return found
}
