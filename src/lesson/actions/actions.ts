import type { FindMentions } from '../prose/mentions.ts'
import type { Named } from '../prose/named.ts'
import type { Sentence } from '../prose/sentence.ts'
import type { Action } from './action.ts'
import { actionsInSentence } from './one-sentence.ts'

/**
 * What a lesson tells a reader to do, in the order of its sentences. Read from English words: what is not understood is
 * left out, or said to be (`says: 'other'`), and never guessed. Headings, captions and tables tell nothing.
 */
export function actionsOf(sentences: readonly Sentence[], mentions: FindMentions): Action[] {
  /** What `it` and `them` stand for. A call-out may speak of other things than the step. */
  let topic: readonly Named[] = []
  return sentences.flatMap((sentence) => {
    if (sentence.kind !== 'text' || sentence.callout === 'variation') return []
    let own = sentence.callout === undefined ? topic : []
    const actions = actionsInSentence(sentence, mentions(sentence)).map((action) => {
      const done = withMeant(action, own)
      const next = done.objects.length > 0 || own.length > 0 ? done.objects : done.onto
      if (next.length > 0) own = next.map(({ named }) => named)
      return done
    })
    if (sentence.callout === undefined) topic = own
    return actions
  })
}

/** An action whose sentence does not name what it is done to, with what that is. */
function withMeant(action: Action, topic: readonly Named[]): Action {
  const { objects, says, noun } = action
  if (objects.length > 0) return action
  // `The arch`, just after the inner arch has been spoken of.
  const called = topic.filter(({ name }) => says === 'other' && noun !== undefined && endsIn(name, noun))
  const meant = says === 'pronoun' || says === 'nothing' ? topic : called
  return { ...action, objects: meant.map((named) => ({ named, sure: false })) }
}

/** Whether the last word of a name is this one, or this one is several of it. */
export function endsIn(name: string, noun: string): boolean {
  const last = /\S+$/.exec(name.toLowerCase())?.[0]
  return last !== undefined && [last, `${last}s`, `${last}es`].includes(noun)
}
