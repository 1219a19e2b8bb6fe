import { hasErrors } from '../../length/finding.ts'
import { once } from '../../length/once.ts'
import { actionsOf } from '../actions/actions.ts'
import { courseOf } from '../actions/course.ts'
import { deedsIn } from '../actions/deeds/deed-words.ts'
import { deedsOf } from '../actions/deeds/deeds-of.ts'
import type { FilledLesson, Lesson } from '../lesson.ts'
import { localMentionFinder } from '../prose/local-mentions.ts'
import { type Mention, mentionFinder } from '../prose/mentions.ts'
import { namedIn } from '../prose/named.ts'
import type { Sentence } from '../prose/sentence.ts'
import { sentencesOf } from '../prose/sentences.ts'
import { isInEnglish } from './in-english.ts'
import type { Prose } from './rule.ts'

/** The words of a lesson, read when they are first asked for. */
export function proseOf({
  lesson,
  filled,
}: {
  readonly lesson: Pick<Lesson, 'source' | 'findings'>
  readonly filled: Pick<FilledLesson, 'tree' | 'cards' | 'frontMatter' | 'wording'>
}): Prose {
  const sentences = once(() => sentencesOf(filled.tree, lesson.source))
  const named = once(() => namedIn(filled.cards.map(({ card }) => card)))
  const finder = once(() => mentionFinder(named()))
  const known = new WeakMap<object, Mention[]>()
  const mentions: Prose['mentions'] = (sentence) => {
    const found = known.get(sentence) ?? finder()(sentence)
    known.set(sentence, found)
    return found
  }
  const course = once(() => {
    const said = canBeFollowed({ lesson, filled }, sentences()) ? sentences() : []
    return courseOf(said, named(), actionsOf(said, mentions))
  })
  const deeds = once(() => {
    const words = deedsIn(filled.wording.locale)
    if (!words) return course()
    const said = isWithoutMistakes({ lesson }, sentences()) ? sentences() : []
    return courseOf(said, named(), deedsOf(said, localMentionFinder(named(), filled.wording), words))
  })
  return { sentences, named, mentions, course, deeds }
}

const canBeFollowed = (
  { lesson, filled }: Parameters<typeof proseOf>[0],
  sentences: readonly Sentence[],
): boolean => isInEnglish({ filled }) && isWithoutMistakes({ lesson }, sentences)

/** Without a mistake that may hide what a step speaks of. */
const isWithoutMistakes = (
  { lesson }: Pick<Parameters<typeof proseOf>[0], 'lesson'>,
  sentences: readonly Sentence[],
): boolean =>
  !hasErrors(lesson.findings) &&
  sentences.every(({ measures }) => measures.every(({ node }) => node.text !== undefined))
