import { type FSWatcher, watch } from 'node:fs'

/** In ms: how long after a change all is looked at, and after which time it is looked at whatever the system tells. */
export interface WatchTiming {
  readonly after: number
  readonly atLatest: number
}

/**
 * Builds again whenever something changes in folders, until it is stopped. What the system tells only says when to look:
 * some disks tell nothing, so they are looked at from time to time.
 *
 * @param build gives the folders that a change in them concerns.
 * @param failed hears of a build that could not be done; the next change tries again.
 */
export async function watchFolders(
  build: () => Promise<readonly string[]>,
  stop: AbortSignal,
  failed: (error: unknown) => void,
  { after, atLatest }: WatchTiming = { after: 200, atLatest: 5000 },
): Promise<void> {
  const watchers = new Map<string, FSWatcher>()
  let stirred = false
  let wake = (): void => {}
  const stir = (): void => {
    stirred = true
    wake()
  }
  stop.addEventListener('abort', stir)
  const woken = (ms: number): Promise<void> =>
    new Promise((done) => {
      const timer = setTimeout(done, ms)
      wake = () => {
        clearTimeout(timer)
        done()
      }
    })
  while (!stop.aborted) {
    stirred = false
    try {
      follow(watchers, await build(), stir)
    } catch (error) {
      failed(error)
    }
    if (!stirred && !stop.aborted) await woken(atLatest)
    // An editor saves in several moves: all of them are waited for.
    if (stirred && !stop.aborted) {
      stirred = false
      while (!stop.aborted) {
        await woken(after)
        if (!stirred) break
        stirred = false
      }
    }
  }
  stop.removeEventListener('abort', stir)
  follow(watchers, [], stir)
}

/** Watches these folders and no others. One that cannot be watched is looked at from time to time all the same. */
function follow(watchers: Map<string, FSWatcher>, folders: readonly string[], stir: () => void): void {
  const wanted = new Set(folders)
  for (const [place, watcher] of watchers)
    if (!wanted.has(place)) {
      watcher.close()
      watchers.delete(place)
    }
  for (const place of wanted) {
    if (watchers.has(place)) continue
    try {
      const watcher = watch(place, stir)
      watcher.on('error', () => {
        watcher.close()
        watchers.delete(place)
      })
      watchers.set(place, watcher)
    } catch {
      // As above.
    }
  }
}
