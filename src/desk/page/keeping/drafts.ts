/** The newest words of a lesson, as this browser keeps them. */
export interface Draft {
  /** Which lesson: the folder and the path, or a name of its own as long as it is in no folder. */
  readonly lesson: string
  /** Identity of the store. */
  readonly store: string
  readonly path?: string
  readonly name: string
  readonly text: string
  /** The editor's own: selection and undo. */
  readonly state?: unknown
  /** Version of the file that the text goes back to. */
  readonly base?: string
  /** Whether the text differs from that file. */
  readonly unsaved: boolean
  /** Texts that were on their way into the file; whether they arrived was not known when this was written. */
  readonly sent?: readonly string[]
  /** Counts who wrote: a tab whose turn is over overwrites nothing of a later one. */
  readonly turn: number
  /** Milliseconds since 1970. */
  readonly changed: number
}

/** A text of a lesson from before. */
export interface Earlier {
  readonly id: number
  readonly lesson: string
  readonly text: string
  readonly changed: number
  readonly why: Why
}

/** Saved in the folder, kept now and then while writing, or put aside for another text. */
export type Why = 'saved' | 'written' | 'aside'

/** Drafts and earlier texts in this browser. Its functions fail where the browser keeps nothing or is full. */
export interface Drafts {
  get(lesson: string): Promise<Draft | undefined>
  /** All or nothing; gives false, and writes nothing, if a later turn has written already. */
  put(draft: Draft): Promise<boolean>
  /** Writes what it can before the page goes away, without waiting. */
  putNow(draft: Draft): void
  drop(lesson: string): Promise<void>
  /** All drafts, newest first. */
  all(): Promise<readonly Draft[]>
  earlier(lesson: string): Promise<readonly Earlier[]>
  keepEarlier(lesson: string, text: string, why: Why, now: number): Promise<void>
  forget(id: number): Promise<void>
  /** Gives the earlier texts of a lesson to its new identity, when it comes into a folder. */
  rename(from: string, to: string): Promise<void>
}
