import { rmSync } from 'node:fs'
import process from 'node:process'

/** Files that are being written under other names. */
const drafts = new Set<string>()

const signals = ['SIGINT', 'SIGTERM', 'SIGHUP'] as const

/** So late nothing but this waits, so the disk is asked at once. */
function clear(): void {
  for (const path of drafts)
    try {
      rmSync(path, { force: true })
    } catch {
      // It was never made, or the disk is gone: there is nobody left to tell.
    }
}

/** Ends the program as the signal would have done. Where others listen too, they see to the end. */
function stop(signal: NodeJS.Signals): void {
  if (process.listenerCount(signal) > 1) return
  clear()
  process.off(signal, stop)
  process.kill(process.pid, signal)
}

/**
 * Does something with drafts of files. Should the program be ended meanwhile, by Ctrl-C or in another way that can be
 * heard, they are taken away.
 */
export async function withDrafts<T>(paths: readonly string[], act: () => Promise<T>): Promise<T> {
  if (drafts.size === 0) {
    process.on('exit', clear)
    for (const signal of signals) process.on(signal, stop)
  }
  for (const path of paths) drafts.add(path)
  try {
    return await act()
  } finally {
    for (const path of paths) drafts.delete(path)
    if (drafts.size === 0) {
      process.off('exit', clear)
      for (const signal of signals) process.off(signal, stop)
    }
  }
}
