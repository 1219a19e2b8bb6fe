import type { Named } from '../prose/named.ts'
import type { Sentence } from '../prose/sentence.ts'
import type { ActionKind } from './verbs.ts'

/** A thing of the card that something is done to or with. */
export interface Thing {
  readonly named: Named
  /** Not when it is only meant by `it`, or when its name may be an everyday word, such as `the front`. */
  readonly sure: boolean
}

/** One thing that a hand does, as a sentence says it. */
export interface Action {
  readonly kind: ActionKind
  readonly sentence: Sentence
  /** From where to where in its words: from the verb to the next one. */
  readonly start: number
  readonly end: number
  /** What it is done to. */
  readonly objects: readonly Thing[]
  /** What that comes to lie on or in. */
  readonly onto: readonly Thing[]
  /**
   * How the sentence says what it is done to: by a name, by a word such as `them`, not at all, by words that are no name
   * (`the picture`), by a word for several pieces (`all the layers`), or it is glue or tape that is put somewhere.
   */
  readonly says: 'name' | 'pronoun' | 'nothing' | 'other' | 'several' | 'glue'
  /** Whether a piece is only turned or held, so that it can be cut or scored. */
  readonly turns?: true
  /** The last of the words that are no name. */
  readonly noun?: string
}
