import { computed, type ReadonlySignal, type Signal, signal } from '@preact/signals'
import type { Drafts } from './drafts.ts'
import type { Keepable, Keeping } from './keeper.ts'
import { draftOf, handed, keepingOf, type OnDesk } from './on-desk.ts'
import { putAside } from './put-aside.ts'
import type { Store } from './store.ts'
import type { Seat, Tabs } from './tabs.ts'
import { makeWriter, type Writer } from './writer.ts'

/** The time, and something to be done later. */
export interface Clock {
  /** Milliseconds since 1970. */
  now(): number
  /** Gives what calls it off. */
  later(milliseconds: number, work: () => void): () => void
}

/** What this tab had on its desk last; it outlives the page but not the tab. */
export interface LastSeen {
  get(): string | undefined
  set(lesson: string | undefined): void
}

/** What a keeper is made of. */
export interface Tools {
  readonly store: Store
  readonly drafts: Drafts
  readonly tabs: Tabs
  readonly page: Keepable
  readonly clock: Clock
  readonly lastSeen: LastSeen
  /** A name that no lesson has, for one that is in no folder. */
  newName(): string
  /**
   * Brings the pictures of a lesson that was in no folder beside its file, before it is saved there for the first time.
   * Gives what puts their new addresses into a text.
   */
  settle?(lesson: string, path: string, store: Store): Promise<(text: string) => string>
}

/** All that the parts of the keeper share. */
export interface Core extends Tools {
  readonly now: Signal<OnDesk | undefined>
  readonly present: Signal<Store>
  /** Whether this browser keeps drafts. */
  readonly keeps: Signal<boolean>
  readonly state: ReadonlySignal<Keeping>
  readonly writer: Writer
  /** One thing after the other: opening, saving and choosing never run into each other. */
  inTurn<T>(work: () => Promise<T>): Promise<T>
  /** Reads the file again, and does what follows from it. */
  readonly lookAgain: () => Promise<void>
  seat: Seat | undefined
}

export function makeCore(tools: Tools, lookAgain: (core: Core) => Promise<void>): Core {
  const now = signal<OnDesk | undefined>(undefined)
  const keeps = signal(true)
  let last: Promise<unknown> = Promise.resolve()
  const core: Core = {
    ...tools,
    now,
    present: signal(tools.store),
    keeps,
    state: stateOf(now, keeps),
    writer: makeWriter(() => writeDraft(core), tools.clock),
    inTurn(work) {
      const done = last.then(work)
      last = done.catch(() => {})
      return done
    },
    lookAgain: () => lookAgain(core),
    seat: undefined,
  }
  return core
}

/** Changes what is known of the lesson on the desk, unless another one lies there by now. */
export function update(core: Core, lesson: string, change: Partial<OnDesk>, ...gone: (keyof OnDesk)[]): void {
  const on = core.now.value
  if (on?.lesson !== lesson) return
  const next = { ...on, ...change }
  for (const key of gone) delete next[key]
  core.now.value = next
}

/** The line at the top is written anew only when it says something else. */
function stateOf(now: Signal<OnDesk | undefined>, keeps: Signal<boolean>): ReadonlySignal<Keeping> {
  let before: Keeping = keepingOf(undefined, true)
  return computed(() => {
    const next = keepingOf(now.value, keeps.value)
    const same =
      next.choice === before.choice || JSON.stringify(next.choice) === JSON.stringify(before.choice)
    const keys = ['phase', 'words', 'lesson', 'name', 'path', 'unsaved'] as const
    if (!same || keys.some((key) => next[key] !== before[key])) before = next
    return before
  })
}

/** What is in the editor counts: it tells of a change only a moment later. */
export function catchUp(core: Core): OnDesk | undefined {
  const on = core.now.value
  const text = on?.writes ? core.page.text() : undefined
  if (on && text !== undefined && text !== on.text) update(core, on.lesson, { text })
  return core.now.value
}

async function writeDraft(core: Core): Promise<void> {
  const on = catchUp(core)
  if (!on?.writes) return
  const draft = draftOf(on, core.page.state(), core.clock.now())
  try {
    const written = await core.drafts.put(draft)
    core.keeps.value = true
    if (written) core.seat?.tell(handed(on, undefined))
    if (written) return
    // Another tab has taken over while this one slept.
    update(core, on.lesson, { writes: false })
    await putAside(core, on)
  } catch {
    core.keeps.value = false
  }
}
