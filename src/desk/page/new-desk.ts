import { computed, effect, signal } from '@preact/signals'
import type { Beside, Engine, Look, PictureData, Settings, WorkshopData } from '../engine/engine.ts'
import type { Desk, View } from './desk.ts'
import type { Keepable } from './keeping/keeper.ts'
import type { WritingHandle, WritingStart } from './writing/handle.ts'

/** The desk, and what only the page itself does with it. */
export interface OwnDesk extends Desk {
  /** Takes the editor in, when it stands. */
  writes(handle: WritingHandle): void
  readonly handle: () => WritingHandle | undefined
  /** What an editor that is set up now begins with. */
  readonly start: () => WritingStart
  /** What keeps the lesson does this to the desk. */
  readonly kept: Keepable
  /** The text has changed under the cursor or by an edit. */
  wrote(text: string): void
  /** What was said last, for a line that a screen reader hears. */
  readonly said: { readonly value: string }
  /** Whether the writing lies open beside the paper. */
  readonly writing: { value: boolean }
  /** Whether the engine is still at an older text. */
  readonly behind: { readonly value: boolean }
}

/** What holds until the teacher says otherwise. */
export const usualSettings: Settings = { paper: 'a4', theme: 'step-sheet', people: 14, spare: 2 }

/** An empty desk. Whatever is written on it is looked at by the engine, one look at a time, the newest text first. */
export function newDesk(engine: Engine, settings: Settings = usualSettings): OwnDesk {
  const text = signal('')
  const wishes = signal(settings)
  const pictures = signal<PictureData>({})
  const workshop = signal<WorkshopData | undefined>(undefined)
  const beside = computed<Beside>(() => ({
    pictures: pictures.value,
    ...(workshop.value && { workshop: workshop.value }),
  }))
  const look = signal<Look | undefined>(undefined)
  const cursor = signal(0)
  const said = signal('')
  const writing = signal(true)
  let handle: WritingHandle | undefined
  let start: WritingStart = { text: '' }
  keepLooking(engine, () => [text.value, wishes.value, beside.value], look)
  const say = (words: string): void => {
    // The same words again are heard again.
    said.value = said.value === words ? `${words}\u00a0` : words
  }
  const show = (words: string, state?: unknown): void => {
    start = { text: words, ...(state !== undefined && { state }) }
    text.value = words
    handle?.open(start)
  }
  const kept: Keepable = {
    show,
    replace: (words) => (handle ? handle.replaceAll(words) : show(words)),
    text: () => handle?.text() ?? text.value,
    state: () => handle?.state() ?? start.state,
    clear() {
      handle = undefined
      show('')
    },
    say,
  }
  return {
    engine,
    text,
    settings: wishes,
    look,
    pictures,
    workshop,
    beside,
    setting: signal(''),
    cursor,
    step: signal<number | undefined>(undefined),
    view: signal<View>('pages'),
    said,
    writing,
    behind: computed(() => look.value?.text !== text.value),
    handle: () => handle,
    writes(made) {
      handle = made
    },
    wrote(to) {
      text.value = to
    },
    edit: (edits) => handle?.edit(edits),
    goTo(at) {
      writing.value = true
      handle?.goTo(at)
    },
    say,
    start: () => start,
    kept,
  }
}

type Asked = [text: string, settings: Settings, beside: Beside]

/** Looks again whenever something changes; what changes during a look is looked at after it, and only the newest. */
function keepLooking(engine: Engine, asked: () => Asked, look: { value: Look | undefined }): void {
  let busy = false
  let waiting: Asked | undefined
  const next = async (now: Asked): Promise<void> => {
    busy = true
    try {
      const [text] = now
      look.value = text === '' ? undefined : await engine.look(...now)
    } finally {
      busy = false
      const then = waiting
      waiting = undefined
      if (then) void next(then)
    }
  }
  effect(() => {
    const now = asked()
    if (busy) waiting = now
    else void next(now)
  })
}
