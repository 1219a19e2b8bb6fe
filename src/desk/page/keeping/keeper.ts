import type { ReadonlySignal } from '@preact/signals'
import type { Earlier } from './drafts.ts'
import type { Kept, Store } from './store.ts'

/** How the lesson on the desk is kept. */
export type Phase =
  /** No lesson is open. */
  | 'empty'
  /** What is on the desk is what lies in the folder. */
  | 'saved'
  /** Kept in this browser, and in the folder not yet. */
  | 'kept'
  | 'saving'
  /** The folder does not answer. It is asked again by and by. */
  | 'away'
  /** The lesson and its file have gone different ways: `choice` says how. */
  | 'choose'
  /** Another tab writes in it. */
  | 'looking'

/** What is said at the top about the lesson on the desk. */
export interface Keeping {
  readonly phase: Phase
  /** In plain words: ``Saved in `harbour-lights.md` ``, in HTML-free text without backticks. */
  readonly words: string
  /** Which lesson it is, for what is kept beside it in this browser. */
  readonly lesson?: string
  /** What the lesson is called before it has a file: `harbour-lights`. */
  readonly name?: string
  /** Its file in the store; none for a new lesson. */
  readonly path?: string
  /** Whether something on the desk is not in the folder. */
  readonly unsaved: boolean
  /** What the teacher has to choose between, in phase `choose`. */
  readonly choice?: Choice
}

/** Two texts of one lesson, of which neither may be lost. */
export interface Choice {
  /** A draft from before met a newer file, a file was changed while it was open, or saving met a changed one. */
  readonly why: 'draft' | 'changed' | 'save'
  readonly mine: string
  readonly theirs: Kept
}

/** The one on the desk, the one in the file, or both: then the one on the desk becomes a file of its own. */
export type Chosen = 'mine' | 'theirs' | 'both'

/**
 * What came of a wish to save. In each case but `saved`, `state` says why and the draft is kept. `taken`: there is a
 * file of that name. `kept`: nothing was to be saved.
 */
export type Outcome = 'saved' | 'kept' | 'choose' | 'taken' | 'failed' | 'looking'

/** Keeps the lesson on the desk: never loses a word of it, and overwrites nothing unasked. Its functions never throw. */
export interface Keeper {
  readonly state: ReadonlySignal<Keeping>
  /** Where lessons are opened from and saved to. */
  readonly store: ReadonlySignal<Store>
  /**
   * Another folder. A lesson that lies in a folder stays on the desk and is saved where it was; one that lies in none,
   * or was opened as a single file, is saved in the new one.
   */
  use(store: Store): Promise<void>
  /** Shows a file of the store, or the draft of it that was left. Gives whether something could be shown. */
  open(path: string): Promise<boolean>
  /** A new lesson, in no folder yet. `name` is what its file may be called, without ending. */
  begin(text: string, name: string): Promise<void>
  /** The lesson that was on the desk when the page was left. Gives whether there was one. */
  resume(): Promise<boolean>
  /** To be called with each change of the text or of the selection; costs nothing until a moment later. */
  changed(text: string): void
  /** A new lesson gets a free name like its own. */
  save(): Promise<Outcome>
  /** As a new file, or under another name; never over a file that is there (`taken`). */
  saveAs(name: string): Promise<Outcome>
  choose(chosen: Chosen): Promise<Outcome>
  /** Makes this tab the one that writes. What the other one has not sent yet arrives first. */
  takeOver(): Promise<void>
  /** Puts the lesson away: it stays kept, and the desk is empty. */
  close(): Promise<void>
  /** Writes the draft at once. */
  flush(): Promise<void>
  /** The same without waiting, when the page is hidden or left. */
  leaving(): void
  /** Looks at the file again: when the window is looked at again, or the folder is likely to answer again. */
  lookAgain(): Promise<void>
  /** Texts of this lesson from before, newest first. */
  earlier(): Promise<readonly Earlier[]>
  /** Puts an earlier text on the desk, as one step of undo. */
  bringBack(version: Earlier): Promise<void>
  forget(version: Earlier): Promise<void>
  /** Lessons with words that are in no folder, newest first. */
  unsaved(): Promise<readonly Left[]>
  /** Opens one of them. */
  openLeft(left: Left): Promise<boolean>
  /** Throws one of them away. */
  dropLeft(left: Left): Promise<void>
}

/** A lesson that was left with words that are in no folder. */
export interface Left {
  readonly lesson: string
  readonly name: string
  readonly path?: string
  /** Milliseconds since 1970. */
  readonly changed: number
}

/** What the keeper does to the page. */
export interface Keepable {
  /** Puts a lesson on the desk, with the editor's state (selection, undo) if there is one. */
  show(text: string, state?: unknown): void
  /** Another text of the same lesson, as one step of undo. */
  replace(text: string): void
  /** The text in the editor, which may be newer than what `changed` has told; undefined while there is no editor. */
  text(): string | undefined
  /** The editor's state as data, to be given to `show` again: of the same moment as `text()`. */
  state(): unknown
  /** Takes the lesson off the desk. */
  clear(): void
  /** Says something once, politely. */
  say(words: string): void
}
