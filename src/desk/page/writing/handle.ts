import type { Edit } from '../../engine/engine.ts'
import type { Desk } from '../desk.ts'

/** What the editor begins with. */
export interface WritingStart {
  readonly text: string
  /** What `state()` gave before; it holds only when its text is the same, and is dropped quietly otherwise. */
  readonly state?: unknown
}

/** What the page can ask of the editor. Nothing of it calls back `changed` for a text that stays the same. */
export interface WritingHandle {
  /** The text as it stands now; reading it copies a long lesson, so not on each key. */
  text(): string
  /** Puts edits in as one step of undo; the cursor keeps its place in the words around it. */
  edit(edits: readonly Edit[]): void
  /** Takes the cursor to a place, into sight, and the keyboard with it. */
  goTo(at: number): void
  /** Selects a stretch, in sight, and takes the keyboard to it. */
  select(from: number, to: number): void
  /** Another text in the place of the whole, to be undone in one step; only what differs is touched. */
  replaceAll(text: string): void
  /** Another lesson: what was undone and done before is forgotten. */
  open(start: WritingStart): void
  /** Document, selection and what can be undone, as JSON, so that undoing survives a reload. */
  state(): unknown
  /** Whether the words can only be looked at: another tab writes them. */
  lock(on: boolean): void
  /** Takes the keyboard to the editor. */
  focus(): void
  /** Opens the search over the text. */
  search(): void
}

/** What the editor is given. */
export interface WritingProps {
  readonly desk: Desk
  readonly start: WritingStart
  /** After each change, with the new text. Called a moment after the key, never while it is handled. */
  readonly changed: (text: string) => void
  /** A moment after typing rests, with what `state()` gives. */
  readonly onState?: (state: unknown) => void
  /** Once, when the editor stands. */
  readonly ready: (handle: WritingHandle) => void
}
