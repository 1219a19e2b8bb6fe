import { type FSWatcher, watch } from 'node:fs'
import { readFile } from 'node:fs/promises'
import { findTexts } from './list-files.ts'
import { stampOf } from './listed.ts'
import { isDraft } from './save-whole.ts'
import { mostText, versionOf } from './text-file.ts'

/** A file that is not what it was. */
export interface Change {
  readonly path: string
  /** What it is now; none when it is gone. */
  readonly version?: string
}

/** How a folder is watched. */
export interface Watching {
  /** Called when watching has begun. */
  readonly ready: () => void
  /** In ms: the folder is looked at so long after the system tells of something. */
  readonly after: number
  /** In ms: it is looked at after so long, also when the system tells nothing. */
  readonly atLatest: number
  /** What tells of something. */
  readonly watch: (place: string, options: { readonly persistent: false }, stir: () => void) => FSWatcher
}

const usual: Watching = { ready: () => {}, after: 120, atLatest: 5000, watch }

/**
 * Watches the texts of a folder. What the system tells only says when to look: it tells too much of some disks and
 * nothing of others, such as drives in a network. Those are looked at from time to time.
 *
 * @param changed called with each file that has changed since watching began.
 * @returns what ends it.
 */
export function watchTexts(
  folder: string,
  changed: (change: Change) => void,
  how: Partial<Watching> = {},
): () => void {
  const { ready, after, atLatest, watch } = { ...usual, ...how }
  const watchers = new Map<string, FSWatcher>()
  let known: Map<string, string> | undefined
  let timer: NodeJS.Timeout | undefined
  let ended = false
  let looking = false
  let again = false
  const soon = (ms: number): void => {
    clearTimeout(timer)
    timer = ended ? undefined : setTimeout(look, ms)
  }
  // A program that writes all the time must not put the look off for ever.
  const stir = (): void => {
    if (!again && !looking) soon(after)
    again = true
  }
  const watched = (place: string): FSWatcher => watch(place, { persistent: false }, stir)
  const look = async (): Promise<void> => {
    looking = true
    again = false
    const { files, folders } = await findTexts(folder, isDraft)
    follow(watchers, folders, watched)
    const now = new Map(files.map((file) => [file.path, stampOf(file)]))
    const before = known
    known = now
    if (before) {
      for (const { path, place, stats } of files) {
        if (ended || before.get(path) === now.get(path) || stats.size > mostText) continue
        const bytes = await readFile(place).catch(() => undefined)
        changed({ path, ...(bytes && { version: versionOf(bytes) }) })
      }
      for (const path of before.keys()) if (!now.has(path) && !ended) changed({ path })
    } else ready()
    looking = false
    // What came between listing the folders and watching them is found by looking once more.
    if (ended) follow(watchers, [], watched)
    else soon(again || !before ? after : atLatest)
  }
  void look()
  return () => {
    ended = true
    clearTimeout(timer)
    follow(watchers, [], watched)
  }
}

/** Watches these folders and no others. One that cannot be watched is looked at from time to time all the same. */
function follow(
  watchers: Map<string, FSWatcher>,
  folders: readonly string[],
  watched: (place: string) => FSWatcher,
): void {
  const wanted = new Set(folders)
  for (const [place, watcher] of watchers) {
    if (wanted.has(place)) continue
    watcher.close()
    watchers.delete(place)
  }
  for (const place of folders) {
    if (watchers.has(place)) continue
    try {
      const watcher = watched(place)
      watcher.on('error', () => {
        watcher.close()
        if (watchers.get(place) === watcher) watchers.delete(place)
      })
      watchers.set(place, watcher)
    } catch {
      // As above.
    }
  }
}
