import type { Nodes, Root } from 'mdast'
import type { CalloutNode } from '../nodes.ts'
import { plainText } from '../plain-text.ts'
import { wordFinder } from '../prose/word-list.ts'
import { dangersIn } from './danger.ts'
import { hazards } from './hazards.ts'

/** What a lesson's own cautions speak of. */
export interface SpokenOf {
  /** Names of the hazards they are about. */
  readonly topics: ReadonlySet<string>
  /** Those about which they say what an adult does. */
  readonly withAdult: ReadonlySet<string>
}

/** Reads the cautions of a lesson. One that says nothing is about nothing, whatever it claims. */
export function spokenOf(tree: Root): SpokenOf {
  const topics = new Set<string>()
  const withAdult = new Set<string>()
  for (const caution of cautionsIn(tree)) {
    const text = plainText(caution)
    if (!/\p{L}+\P{L}+\p{L}+\P{L}+\p{L}/u.test(text)) continue
    for (const topic of [...(caution.about ?? []), ...topicsIn(text)]) {
      topics.add(topic)
      if (speaksOfAdult(text)) withAdult.add(topic)
    }
  }
  return { topics, withAdult }
}

const cautionsIn = (node: Nodes): CalloutNode[] => [
  ...(node.type === 'callout' && node.kind === 'caution' ? [node] : []),
  ...('children' in node ? node.children.flatMap((child) => cautionsIn(child as Nodes)) : []),
]

const finders = hazards.map(({ name, also = [] }) => ({ name, find: wordFinder(also) }))

/**
 * The hazards that a text names by their tools, sentence by sentence. Where a sentence names no tool, a more general word
 * does: `the blade` is that of a knife, unless a trimmer stands beside it.
 */
export function topicsIn(text: string): string[] {
  const reading = { as: 'caution', children: true } as const
  return text.split(/(?<=[.!?…])\s+/).flatMap((sentence) => {
    const named = dangersIn(sentence, reading).map(({ hazard }) => hazard.name)
    // What only children are told of, such as scissors, is too common to say which blade is meant.
    if (dangersIn(sentence, { ...reading, children: false }).length > 0) return named
    return [...named, ...finders.filter(({ find }) => find(sentence).length > 0).map(({ name }) => name)]
  })
}

const speaksOfAdult = (text: string): boolean =>
  /\b(?:adults?|grown-?(?: )?ups?|teachers?|tutors?|parents?|helpers?|supervis\p{L}*)\b/iu.test(text)
