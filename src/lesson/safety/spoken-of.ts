import type { Nodes, Root } from 'mdast'
import { onceFor } from '../../length/once.ts'
import type { Locale } from '../../wording/locales.ts'
import type { CalloutNode } from '../nodes.ts'
import { plainText } from '../plain-text.ts'
import { spellings } from '../prose/spellings.ts'
import { type FindWords, wordFinder } from '../prose/word-list.ts'
import { dangersIn } from './danger.ts'
import { hazards } from './hazards.ts'
import { ways } from './ways.ts'
import { wordsOf } from './words.ts'

/** What a lesson's own cautions speak of. */
export interface SpokenOf {
  /** Names of the hazards they are about. */
  readonly topics: ReadonlySet<string>
  /** Those about which they say what an adult does. */
  readonly withAdult: ReadonlySet<string>
}

/** Reads the cautions of a lesson in its language. One that says nothing is about nothing, whatever it claims. */
export function spokenOf(tree: Root, locale: Locale): SpokenOf {
  const topics = new Set<string>()
  const withAdult = new Set<string>()
  for (const caution of cautionsIn(tree)) {
    const text = plainText(caution)
    if ((text.match(/\p{L}+/gu) ?? []).length < 3) continue
    for (const topic of [...(caution.about ?? []), ...topicsIn(text, locale)]) {
      topics.add(topic)
      if (ways[locale].adult.test(text)) withAdult.add(topic)
    }
  }
  return { topics, withAdult }
}

const cautionsIn = (node: Nodes): CalloutNode[] => [
  ...(node.type === 'callout' && node.kind === 'caution' ? [node] : []),
  ...('children' in node ? node.children.flatMap((child) => cautionsIn(child as Nodes)) : []),
]

interface Finder {
  readonly name: string
  readonly find: FindWords
}

/** Made once for each language, for few lessons are in several. */
const findersOf = onceFor((locale: Locale): readonly Finder[] =>
  hazards.map((hazard) => ({
    name: hazard.name,
    find: wordFinder(wordsOf(hazard, locale).also ?? [], spellings[locale]),
  })),
)

/**
 * The hazards that a text names by their tools, sentence by sentence. Where a sentence names no tool, a more general word
 * does: `the blade` is that of a knife, unless a trimmer stands beside it.
 */
export function topicsIn(text: string, locale: Locale): string[] {
  const reading = { as: 'caution', children: true, locale } as const
  return text.split(/(?<=[.!?…])\s+/).flatMap((sentence) => {
    const named = dangersIn(sentence, reading).map(({ hazard }) => hazard.name)
    // What only children are told of, such as scissors, is too common to say which blade is meant.
    if (dangersIn(sentence, { ...reading, children: false }).length > 0) return named
    return [
      ...named,
      ...findersOf(locale)
        .filter(({ find }) => find(sentence).length > 0)
        .map(({ name }) => name),
    ]
  })
}
