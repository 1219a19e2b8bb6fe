import type { FindMentions, Mention } from '../../prose/mentions.ts'
import type { Named } from '../../prose/named.ts'
import type { Sentence } from '../../prose/sentence.ts'
import type { Action } from '../action.ts'
import type { ActionKind } from '../verbs.ts'
import { type Word, wordsOf } from '../words.ts'
import type { Deeds } from './deed-words.ts'

/**
 * What a lesson that is not in English tells a reader to do, in the order of its sentences. Much less is read than of
 * English: which verbs there are, what they name, and what they are done to. A verb that is in no list, or of which it is
 * not sure that it is done, counts as something that a hand does besides, so that no step is taken for less than it is.
 */
export function deedsOf(sentences: readonly Sentence[], mentions: FindMentions, deeds: Deeds): Action[] {
  let topic: readonly Named[] = []
  return sentences.flatMap((sentence) => {
    if (sentence.kind !== 'text' || sentence.callout === 'variation') return []
    const actions = inSentence(sentence, mentions(sentence), deeds, topic)
    if (sentence.callout === undefined)
      topic =
        actions.findLast(({ objects }) => objects.length > 0)?.objects.map(({ named }) => named) ?? topic
    return actions
  })
}

interface Verb {
  readonly kind: ActionKind | 'turn'
  /** Its words, from the first to behind the last. */
  readonly at: number
  readonly to: number
  /** Whether it is told to be done: not a word that may be a verb of any meaning, nor in `bevor man schneidet`. */
  readonly isSure: boolean
  readonly opens: boolean
}

function inSentence(
  sentence: Sentence,
  mentions: readonly Mention[],
  deeds: Deeds,
  before: readonly Named[],
): Action[] {
  const words = wordsOf(sentence, mentions)
  const verbs = verbsIn(words, sentence, deeds)
  let topic = before
  return verbs.map((verb, i): Action => {
    const isLast = deeds.verbLast && !verb.opens
    // A size that stands behind the verb belongs to it all the same.
    let end = verb.to
    while (isLast && words[end]?.kind === 'measure') end++
    const region = isLast
      ? [...words.slice(verbs[i - 1]?.to ?? 0, verb.at), ...words.slice(verb.to, end)]
      : words.slice(verb.to, verbs[i + 1]?.at ?? words.length)
    const kind = kindOf(verb, region)
    const { objects, onto } = rolesIn(region, mentions, sentence, kind, deeds)
    const plain = region.filter((word) => word.kind === 'plain')
    const isMeant =
      objects.length === 0 &&
      (plain.every(({ text }) => deeds.small.has(text)) || saysIt(words, verb, plain, deeds))
    const named = isMeant ? topic : objects
    if (named.length > 0) topic = named
    const isSeveral = objects.length === 0 && plain.some(({ text }) => deeds.several.has(text))
    return {
      kind: kind === 'turn' ? 'handle' : kind,
      ...(kind === 'turn' && { turns: true }),
      sentence,
      start: words[verb.at]?.start ?? 0,
      end: words[verb.to - 1]?.end ?? 0,
      objects: named.map((one) => ({ named: one, sure: !isMeant })),
      onto: onto.map((one) => ({ named: one, sure: true })),
      says: objects.length > 0 ? 'name' : isSeveral ? 'several' : isMeant ? 'pronoun' : 'other',
    }
  })
}

/** `Schneide … ab` cuts nothing from its sheet. */
function kindOf({ kind, isSure }: Verb, region: readonly Word[]): Verb['kind'] {
  if (!isSure) return 'handle'
  return kind === 'cut' && ['ab', 'weg', 'ein', 'durch'].includes(region.at(-1)?.text ?? '') ? 'shape' : kind
}

function verbsIn(words: readonly Word[], { words: text }: Sentence, deeds: Deeds): Verb[] {
  const verbs: Verb[] = []
  let clause = 0
  for (let at = 0; at < words.length; at++) {
    const word = words[at]
    if (!word) continue
    if (word.opens) clause = at
    if (word.kind !== 'plain') continue
    const opens = opensAt(words, at, deeds)
    const [kind, length] = meaningOf(words, at, opens, deeds)
    // Within a clause a word with a capital is a noun: `das Schneiden`.
    const isNoun = !word.opens && /^\p{Lu}/u.test(text.slice(word.start))
    if (isNoun || (kind === undefined && !looksLikeVerb(words, at, opens, deeds))) continue
    const isSure =
      kind !== undefined && !words.slice(clause, at).some(({ text: one }) => deeds.notDone.has(one))
    verbs.push({ kind: kind ?? 'handle', at, to: at + length, isSure, opens: opens && !endsHere(words, at) })
    at += length - 1
  }
  return verbs
}

/** Whether a clause, or what goes on after `und`, begins with a word: `puis coller`, `la coller`. */
function opensAt(words: readonly Word[], at: number, deeds: Deeds): boolean {
  const before = words[at - 1]
  if (words[at]?.opens || before === undefined || deeds.and.has(before.text)) return true
  const isMeant = !deeds.verbLast && before.kind === 'plain' && deeds.pronouns.has(before.text)
  return isMeant && opensAt(words, at - 1, deeds)
}

/** Whether the clause ends with a word: then what it is done to stands before it. */
const endsHere = (words: readonly Word[], at: number): boolean => {
  const next = words[at + 1]
  return next === undefined || next.opens
}

/** What a word, or several, say that is done, and how many words they are. */
function meaningOf(
  words: readonly Word[],
  at: number,
  opens: boolean,
  { verbs, called, verbLast }: Deeds,
): [Verb['kind'] | undefined, number] {
  for (const length of [3, 2, 1]) {
    const text = words
      .slice(at, at + length)
      .map((word) => word.text)
      .join(' ')
    const bare = verbLast ? text : text.replace(/^l'/, '').replace(enclitic, '')
    const kind = verbs.get(text) ?? verbs.get(bare) ?? (opens ? called.get(text) : undefined)
    if (kind) return [kind, length]
  }
  return [undefined, 1]
}

function looksLikeVerb(
  words: readonly Word[],
  at: number,
  opens: boolean,
  { ending, noVerbs, verbLast, and }: Deeds,
): boolean {
  const text = words[at]?.text ?? ''
  if (!ending.test(text) || noVerbs.has(text)) return false
  return verbLast ? endsHere(words, at) || and.has(words[at + 1]?.text ?? '') : opens
}

/** `sie rillen`, `le coller`, `pegarlo`. */
function saysIt(words: readonly Word[], { at, to }: Verb, plain: readonly Word[], deeds: Deeds): boolean {
  const { pronouns, verbLast, verbs } = deeds
  if (verbLast) return plain.some(({ text }) => pronouns.has(text))
  const own = words[to - 1]?.text ?? ''
  const before = words[at - 1]
  return (
    (!verbs.has(own) && (enclitic.test(own) || own.startsWith("l'"))) ||
    (before?.kind === 'plain' && !words[at]?.opens && pronouns.has(before.text))
  )
}

/** `lo` of `pegarlo`. */
const enclitic = /(?<=[aei]r)(?:l[aeo]s?|se)$/

const sizes: ReadonlySet<string> = new Set(['size', 'width', 'height', 'count', 'sheet'])
const scores: ReadonlySet<string> = new Set([
  'scores',
  'valleys',
  'mountains',
  'uprights',
  'levels',
  'slants',
])

/** What a stretch of words names: what it is done to, and on what that comes to lie. */
function rolesIn(
  region: readonly Word[],
  mentions: readonly Mention[],
  { measures }: Sentence,
  kind: Verb['kind'],
  deeds: Deeds,
): { objects: Named[]; onto: Named[] } {
  const objects = new Set<Named>()
  const onto = new Set<Named>()
  for (const [i, word] of region.entries()) {
    if (word.kind !== 'name' && word.kind !== 'measure') continue
    const leads = leadsTo(region, i, deeds)
    for (const { named, by, start } of mentions.filter(
      (mention) => mention.start < word.end && word.start < mention.end,
    ))
      if (by === 'measure') {
        const paths = measures.find((one) => one.start === start)?.paths ?? []
        const asked = kind === 'score' ? scores : kind === 'cut' ? sizes : new Set(['size'])
        const isAsked = paths.length === 1 && paths[0]?.some((part) => asked.has(part))
        if (isAsked) objects.add(named)
      } else if (leads === undefined) objects.add(named)
      else if (deeds.onto.has(leads)) onto.add(named)
  }
  return { objects: [...objects], onto: [...onto] }
}

/** The preposition that a name hangs on, with no more than an article and an adjective between. */
function leadsTo(region: readonly Word[], at: number, { prepositions }: Deeds): string | undefined {
  for (let i = at; i > Math.max(0, at - 3); i--) {
    const [word, before] = [region[i], region[i - 1]]
    if (word?.opens || before?.kind !== 'plain') return undefined
    if (prepositions.has(before.text)) return before.text
  }
  return undefined
}
