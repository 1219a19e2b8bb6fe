import type { Draft } from './drafts.ts'
import type { Choice, Keeping, Phase } from './keeper.ts'
import type { Store, StoreTrouble } from './store.ts'
import type { Handed } from './tabs.ts'
import { wordsOf } from './words.ts'

/** The lesson on the desk, with all that the keeper knows of it. */
export interface OnDesk {
  /** Identity, for drafts and tabs. */
  readonly lesson: string
  readonly store: Store
  readonly path?: string
  readonly name: string
  readonly text: string
  /** The file that the text goes back to. Its text is unknown where only a draft could be read. */
  readonly base?: { readonly version: string; readonly text?: string }
  /** Texts that may have arrived in the file without an answer. */
  readonly sent: readonly string[]
  /** See {@link Draft.turn}. */
  readonly turn: number
  /** Whether this tab is the one that writes. */
  readonly writes: boolean
  readonly saving?: boolean
  /** Whether the teacher has asked for it to be saved, and it could not be done yet. */
  readonly wanted?: boolean
  readonly trouble?: { readonly kind: StoreTrouble['kind']; readonly words: string }
  readonly choice?: Omit<Choice, 'mine'>
  /** What it was begun with, as long as it is in no folder. */
  readonly begun?: string
}

/** Identity of a store, the same when the page comes back. */
export const storeId = (store: Store): string => store.id ?? `${store.kind}:${store.name}`

export const lessonId = (store: Store, path: string): string => `${storeId(store)}/${path}`

export const isUnsaved = (on: OnDesk): boolean => on.base?.text !== on.text

/** @param keeps whether this browser keeps drafts. */
export function keepingOf(on: OnDesk | undefined, keeps: boolean): Keeping {
  if (!on) return { phase: 'empty', words: '', unsaved: false }
  const phase = phaseOf(on)
  return {
    phase,
    words: wordsOf(on, phase, keeps),
    lesson: on.lesson,
    name: on.name,
    ...(on.path !== undefined && { path: on.path }),
    unsaved: on.writes && isUnsaved(on),
    ...(on.choice && { choice: { ...on.choice, mine: on.text } }),
  }
}

function phaseOf(on: OnDesk): Phase {
  if (!on.writes) return 'looking'
  if (on.choice) return 'choose'
  if (on.saving) return 'saving'
  if (on.trouble?.kind === 'away') return 'away'
  return isUnsaved(on) ? 'kept' : 'saved'
}

export const draftOf = (on: OnDesk, state: unknown, now: number): Draft => ({
  lesson: on.lesson,
  store: storeId(on.store),
  ...(on.path !== undefined && { path: on.path }),
  name: on.name,
  text: on.text,
  ...(state !== undefined && { state }),
  ...(on.base && { base: on.base.version }),
  unsaved: isUnsaved(on),
  ...(on.sent.length > 0 && { sent: on.sent }),
  turn: on.turn,
  changed: now,
})

/** What another tab is told. */
export const handed = (on: OnDesk, state: unknown): Handed => ({
  text: on.text,
  ...(state !== undefined && { state }),
  ...(on.base && { base: on.base.version }),
  unsaved: isUnsaved(on),
  ...(on.sent.length > 0 && { sent: on.sent }),
})

/** The file that a draft goes back to; its text is known only where the draft was that text. */
export const baseOf = (draft: Pick<Draft, 'base' | 'unsaved' | 'text'>): OnDesk['base'] =>
  draft.base === undefined ? undefined : { version: draft.base, ...(!draft.unsaved && { text: draft.text }) }
