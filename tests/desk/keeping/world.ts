import 'fake-indexeddb/auto'
import { browserDrafts } from '../../../src/desk/page/keeping/browser-drafts.ts'
import type { Clock } from '../../../src/desk/page/keeping/core.ts'
import { openDatabase } from '../../../src/desk/page/keeping/database.ts'
import type { Drafts } from '../../../src/desk/page/keeping/drafts.ts'
import type { Keepable, Keeper } from '../../../src/desk/page/keeping/keeper.ts'
import { makeKeeper } from '../../../src/desk/page/keeping/make-keeper.ts'
import { type Store, StoreTrouble } from '../../../src/desk/page/keeping/store.ts'
import type { Hears, Tabs } from '../../../src/desk/page/keeping/tabs.ts'

/** A folder in memory that can be away, silent, full, or break off after writing. */
export interface FakeFolder extends Store {
  readonly files: Map<string, string>
  mood: 'well' | 'away' | 'silent' | 'full' | 'breaks after writing'
  /** Another program writes. */
  write(path: string, text: string): void
}

export function fakeFolder(name = 'harbour lessons', kind: Store['kind'] = 'folder'): FakeFolder {
  const files = new Map<string, string>()
  const watchers = new Set<(path: string) => void>()
  const version = (text: string): string => `version of ${text}`
  const answer = async (folder: FakeFolder): Promise<void> => {
    if (folder.mood === 'away') throw new TypeError('Failed to fetch')
    if (folder.mood === 'silent') await new Promise(() => {})
  }
  const folder: FakeFolder = {
    kind,
    name,
    files,
    mood: 'well',
    write(path, text) {
      files.set(path, text)
      for (const heard of watchers) heard(path)
    },
    list: async () => [...files.keys()].map((path) => ({ path, title: path, kind: 'lesson' })),
    async read(path) {
      await answer(folder)
      const text = files.get(path)
      if (text === undefined) throw new StoreTrouble('missing', 'there is no such file')
      return { path, text, version: version(text) }
    },
    async save(path, text, over) {
      await answer(folder)
      if (folder.mood === 'full') throw new StoreTrouble('full', 'there is no room in the folder')
      const there = files.get(path)
      if (there !== undefined && version(there) !== over)
        return { other: { path, text: there, version: version(there) } }
      files.set(path, text)
      if (folder.mood === 'breaks after writing') throw new TypeError('Failed to fetch')
      return { version: version(text) }
    },
    picture: async () => undefined,
    addPicture: async (_, wanted) => wanted,
    watch(changed) {
      watchers.add(changed)
      return () => watchers.delete(changed)
    },
  }
  return folder
}

/** A clock that goes on only when it is told to. */
export function fakeClock(): Clock & { pass(milliseconds: number): Promise<void> } {
  let now = 1_700_000_000_000
  const waiting = new Set<{ readonly at: number; readonly work: () => void }>()
  return {
    now: () => now,
    later(milliseconds, work) {
      const one = { at: now + milliseconds, work }
      waiting.add(one)
      return () => waiting.delete(one)
    },
    async pass(milliseconds) {
      const until = now + milliseconds
      for (;;) {
        const [next] = [...waiting].filter((one) => one.at <= until).sort((a, b) => a.at - b.at)
        if (!next) break
        waiting.delete(next)
        now = next.at
        next.work()
        await settle()
      }
      now = until
      await settle()
    },
  }
}

/** Lets all that can go on go on. */
export const settle = async (): Promise<void> => {
  for (let turn = 0; turn < 40; turn++) await new Promise((resolve) => setImmediate(resolve))
}

/** Tabs of one browser: the first that sits down writes. */
export function fakeTabs(): Tabs & { sleep(lesson: string): void } {
  const seats = new Map<string, { hears: Hears; awake: boolean; writes: boolean }[]>()
  return {
    free: async (lesson) => !(seats.get(lesson) ?? []).some((one) => one.writes),
    sleep(lesson) {
      for (const one of seats.get(lesson) ?? []) if (one.writes) one.awake = false
    },
    async sit(lesson, hears) {
      const all = seats.get(lesson) ?? []
      seats.set(lesson, all)
      const other = all.find((one) => one.writes)
      const self = { hears, awake: true, writes: !other }
      all.push(self)
      const shown = other?.awake ? other.hears.now() : undefined
      return {
        get writes() {
          return self.writes
        },
        ...(shown && { shown }),
        tell(handed) {
          for (const one of all) if (one !== self) one.hears.changed(handed)
        },
        async takeOver() {
          const writer = all.find((one) => one.writes)
          const news = writer?.awake ? writer.hears.now() : undefined
          if (writer) {
            writer.writes = false
            if (writer.awake) writer.hears.lost(false)
          }
          self.writes = true
          return news
        },
        leave() {
          all.splice(all.indexOf(self), 1)
          const [next] = all
          if (!self.writes || !next) return
          next.writes = true
          next.hears.won()
        },
      }
    },
  }
}

/** An editor that keeps all texts that one can go back to. */
export function fakeEditor(): Keepable & {
  value: string | undefined
  undo: string[]
  said: string[]
  type(text: string): void
  keeper?: Keeper
} {
  const editor: ReturnType<typeof fakeEditor> = {
    value: undefined,
    undo: [],
    said: [],
    show(text, state) {
      editor.value = text
      editor.undo = state === undefined ? [] : [...(state as { undo: string[] }).undo]
    },
    replace(text) {
      editor.undo.push(editor.value ?? '')
      editor.value = text
    },
    text: () => editor.value,
    state: () => ({ undo: [...editor.undo] }),
    clear() {
      editor.value = undefined
      editor.undo = []
    },
    say: (words) => editor.said.push(words),
    type(text) {
      editor.undo.push(editor.value ?? '')
      editor.value = text
      editor.keeper?.changed(text)
    },
  }
  return editor
}

/** A browser: what outlives its pages. */
export async function browser(name: string, folder = fakeFolder()) {
  const database = await openDatabase(name)
  const drafts = browserDrafts(database)
  const tabs = fakeTabs()
  const clock = fakeClock()
  let names = 0
  return {
    folder,
    drafts,
    tabs,
    clock,
    database,
    /** A tab with its own memory of what it showed last; `from` is a tab that it comes back from. */
    page(from?: { lastSeen: { value: string | undefined } }, use: { drafts?: Drafts; tabs?: Tabs } = {}) {
      const editor = fakeEditor()
      const lastSeen = from?.lastSeen ?? { value: undefined }
      const keeper = makeKeeper({
        store: folder,
        drafts: use.drafts ?? drafts,
        tabs: use.tabs ?? tabs,
        page: editor,
        clock,
        lastSeen: { get: () => lastSeen.value, set: (lesson) => (lastSeen.value = lesson) },
        newName: () => String(++names),
      })
      editor.keeper = keeper
      return { editor, keeper, lastSeen }
    },
  }
}
