import type { Paragraph, PhrasingContent } from 'mdast'
import { paragraph } from './blocks.ts'
import { text } from './phrases.ts'

/** An end, and behind it the beginning of another sentence. After `approx.` or `5.` goes on what has begun. */
const end = /[.!?]["’”)]*(?=\s+["‘“(]*\p{Lu})/u

/** A paragraph as far as its first sentence goes. Where it is not plain that one ends, it goes on. */
export function firstSentence({ children }: Paragraph): Paragraph[] {
  const kept: PhrasingContent[] = []
  for (const node of children) {
    const found = node.type === 'text' ? end.exec(node.value) : null
    if (!found || node.type !== 'text') {
      kept.push(node)
      continue
    }
    kept.push(text(node.value.slice(0, found.index + found[0].length)))
    break
  }
  return paragraph(kept)
}
