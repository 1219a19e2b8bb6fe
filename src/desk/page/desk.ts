import type { ReadonlySignal, Signal } from '@preact/signals'
import type { Beside, Edit, Engine, Look, PictureData, Settings, WorkshopData } from '../engine/engine.ts'

/** What lies on the desk beside the writing. */
export type View = 'pages' | 'steps' | 'space' | 'sizes' | 'class'

/** All that the parts of the page share. A part reads signals and calls these functions, and knows no other part. */
export interface Desk {
  readonly engine: Engine
  /** The lesson as it stands in the editor. Only `edit`, `replaceText` and typing change it. */
  readonly text: ReadonlySignal<string>
  readonly settings: Signal<Settings>
  /** Of the newest text that the engine has looked at; a look lags behind the typing. */
  readonly look: ReadonlySignal<Look | undefined>
  /** Pictures beside the lesson, by the address that stands in it; empty for those that were looked for in vain. */
  readonly pictures: Signal<PictureData>
  /** The `workshop.yaml` that speaks for the lesson's folder. */
  readonly workshop: Signal<WorkshopData | undefined>
  /** All that is known of what lies beside the lesson. */
  readonly beside: ReadonlySignal<Beside>
  /** The setting in which the pages of the handout fall best, as a class of the root; empty before it was looked for. */
  readonly setting: Signal<string>
  /** Where the cursor is in the text. */
  readonly cursor: Signal<number>
  /** The step that is being written or read. */
  readonly step: Signal<number | undefined>
  readonly view: Signal<View>
  /** Puts edits into the text, as one step of undo, and leaves the rest as it is. */
  edit(edits: readonly Edit[]): void
  /** Takes the cursor to a place of the text, into sight, with the editor open. */
  goTo(at: number): void
  /** Says something to the teacher, politely, also to a screen reader. */
  say(words: string): void
}
