import type { FilledLesson, Lesson } from '../lesson.ts'
import { mentionFinder } from '../prose/mentions.ts'
import { namedIn } from '../prose/named.ts'
import { sentencesOf } from '../prose/sentences.ts'
import type { Prose } from './rule.ts'

/** The words of a lesson, read when they are first asked for. */
export function proseOf({
  lesson,
  filled,
}: {
  readonly lesson: Pick<Lesson, 'source'>
  readonly filled: Pick<FilledLesson, 'tree' | 'cards'>
}): Prose {
  const sentences = once(() => sentencesOf(filled.tree, lesson.source))
  const named = once(() => namedIn(filled.cards.map(({ card }) => card)))
  const finder = once(() => mentionFinder(named()))
  return { sentences, named, mentions: (sentence) => finder()(sentence) }
}

function once<T>(compute: () => T): () => T {
  let kept: { value: T } | undefined
  return () => {
    kept ??= { value: compute() }
    return kept.value
  }
}
