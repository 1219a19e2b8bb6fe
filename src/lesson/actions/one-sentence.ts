import type { Mention } from '../prose/mentions.ts'
import type { Sentence } from '../prose/sentence.ts'
import type { Action } from './action.ts'
import { type Roles, rolesIn } from './roles.ts'
import { type Verb, verbsIn } from './verbs-in.ts'
import { type Word, wordsOf } from './words.ts'

/** What one sentence tells a reader to do; `it` and `them` stand for nothing yet. */
export function actionsInSentence(sentence: Sentence, mentions: readonly Mention[]): Action[] {
  const words = wordsOf(sentence, mentions)
  const verbs = verbsIn(words)
  return verbs.flatMap((verb, i): Action[] => {
    if (!verb.isDone) return []
    const region = words.slice(behind(words, verb.at), verbs[i + 1]?.at ?? words.length)
    const roles = rolesIn(region, mentions, sentence)
    const subject = (): Roles =>
      rolesIn(words.slice(subjectStart(verb, verbs[i - 1]), verb.at), mentions, sentence)
    return [
      {
        // Pressed on something it is put there; else it was there before.
        kind: verb.kind === 'press' ? (roles.onto.length > 0 ? 'lay' : 'handle') : verb.kind,
        ...(turning.test(words[verb.at]?.text ?? '') && { turns: true }),
        sentence,
        start: words[verb.at]?.start ?? 0,
        end: (region.at(-1) ?? words[verb.at])?.end ?? 0,
        ...(verb.isPassive ? { ...subject(), onto: [...roles.objects, ...roles.onto] } : roles),
      },
    ]
  })
}

const turning = /^(?:turn|flip|rotate|hold)/

/** Where the words behind a verb begin: in `cut out the lamp` behind `out`, which is part of it. */
const behind = (words: readonly Word[], at: number): number =>
  at + (['out', 'off', 'away', 'down', 'up', 'back'].includes(words[at + 1]?.text ?? '') ? 2 : 1)

/** `The base is cut to size`: what it is done to stands before the verb, in its clause. */
const subjectStart = ({ clause }: Verb, before: Verb | undefined): number =>
  Math.max(clause, (before?.at ?? -1) + 1)
