import { onceFor } from '../../../length/once.ts'
import type { Locale } from '../../../wording/locales.ts'
import type { ActionKind } from '../verbs.ts'
import { de } from './de.ts'
import { es } from './es.ts'
import { fr } from './fr.ts'

/** The words by which a language other than English tells what is done. Each list is words with spaces between. */
export interface DeedWords {
  /** What a hand does, in the form in which instructions have it; several words of one deed have `+` between. */
  readonly verbs: Readonly<Record<Exclude<ActionKind, 'handle'> | 'turn', string>>
  /** Makes the other forms of such a word, which stand at the beginning of a clause only. */
  readonly called: (verb: string) => readonly string[]
  /** How a verb ends that is in no list. */
  readonly ending: RegExp
  /** Words that end so and are none. */
  readonly noVerbs: string
  /** Whether what is done stands behind all that it is done to. */
  readonly verbLast: boolean
  /** Words that tie a name to something else. */
  readonly prepositions: string
  /** Those of them that say on what something comes to lie. */
  readonly onto: string
  /** What stands for something that has been named. */
  readonly pronouns: string
  /** Words for many pieces at once. */
  readonly several: string
  /** What may stand between verbs and says nothing of what is worked on. */
  readonly small: string
  /** Words after which a clause goes on with another verb. */
  readonly and: string
  /** What follows in the clause is not done, not yet, or what another deed is for. */
  readonly notDone: string
}

const tongues: Partial<Readonly<Record<Locale, DeedWords>>> = { de, fr, es }

/** The same, to be looked up in. */
export interface Deeds extends Pick<DeedWords, 'ending' | 'verbLast'> {
  /** By their words in small letters, several with a space between. */
  readonly verbs: ReadonlyMap<string, ActionKind | 'turn'>
  readonly called: ReadonlyMap<string, ActionKind | 'turn'>
  readonly noVerbs: ReadonlySet<string>
  readonly prepositions: ReadonlySet<string>
  readonly onto: ReadonlySet<string>
  readonly pronouns: ReadonlySet<string>
  readonly several: ReadonlySet<string>
  readonly small: ReadonlySet<string>
  readonly and: ReadonlySet<string>
  readonly notDone: ReadonlySet<string>
}

/** The words of a language; undefined for English, which is read otherwise. Made once, when a lesson is in it. */
export const deedsIn = onceFor((locale: Locale): Deeds | undefined => {
  const words = tongues[locale]
  return words && lookUp(words)
})

const listed = (words: string): readonly string[] => words.trim().split(/\s+/)
const setOf = (words: string): ReadonlySet<string> => new Set(listed(words))

function lookUp(words: DeedWords): Deeds {
  const { ending, verbLast } = words
  const rows = Object.entries(words.verbs).flatMap(([kind, list]) =>
    listed(list).map((verb) => [verb.replaceAll('+', ' '), kind as ActionKind | 'turn'] as const),
  )
  return {
    ending,
    verbLast,
    verbs: new Map(rows),
    called: new Map(rows.flatMap(([verb, kind]) => words.called(verb).map((form) => [form, kind] as const))),
    noVerbs: setOf(words.noVerbs),
    prepositions: setOf(words.prepositions),
    onto: setOf(words.onto),
    pronouns: setOf(words.pronouns),
    several: setOf(words.several),
    small: setOf(words.small),
    and: setOf(words.and),
    notDone: setOf(words.notDone),
  }
}
