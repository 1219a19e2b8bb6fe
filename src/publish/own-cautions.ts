import type { Nodes, Root } from 'mdast'
import { type Html, html } from './html-text.ts'
import { type ProseContext, proseHtml } from './prose.ts'

/** A caution that the lesson says itself, and the step that it belongs to. */
export interface OwnCaution {
  readonly step: number | null
  /** What it says, its title first, without its figures. */
  readonly text: Html
}

/** The cautions of a lesson in their order. Where its steps are printed whole they stand there already. */
export function ownCautions(tree: Root, context: ProseContext): OwnCaution[] {
  const found: OwnCaution[] = []
  const words: ProseContext = {
    ...context,
    figure: () => undefined,
    scan: () => ({ type: 'text', value: '' }),
  }
  const walk = (node: Nodes, step: number | null): void => {
    if (node.type === 'callout' && node.kind === 'caution')
      found.push({ step, text: html(proseHtml(node.children, words)) })
    const own = node.type === 'listItem' ? node.data?.step : undefined
    if ('children' in node) for (const child of node.children) walk(child, own ?? step)
  }
  walk(tree, null)
  return found
}
