/** What tabs of this browser tell each other about one lesson. */
export interface Handed {
  readonly text: string
  readonly state?: unknown
  /** Version of the file that the text goes back to. */
  readonly base?: string
  readonly unsaved: boolean
  readonly sent?: readonly string[]
}

/** What a tab hears about the lesson on its desk. */
export interface Hears {
  /** Asked of the one who writes. */
  now(): Handed | undefined
  /** The one who writes has changed something. Heard by those who look. */
  changed(handed: Handed): void
  /** Another tab writes from now on. What is here has been handed over, or was too late if `late`. */
  lost(late: boolean): void
  /** The one who wrote is gone: this tab writes from now on. */
  won(): void
}

/** A tab's place at a lesson. */
export interface Seat {
  readonly writes: boolean
  /** What the one who writes has on its desk, for one who looks. */
  readonly shown?: Handed
  /** Tells those who look. */
  tell(handed: Handed): void
  /** Makes this tab the one who writes; gives what the other one had, or undefined if it does not answer. */
  takeOver(): Promise<Handed | undefined>
  leave(): void
}

/** Sees to it that a lesson is written in one tab at a time. */
export interface Tabs {
  sit(lesson: string, hears: Hears): Promise<Seat>
  /** Whether no tab writes in it. */
  free(lesson: string): Promise<boolean>
}
