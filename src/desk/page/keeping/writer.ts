import type { Clock } from './core.ts'

/** Writes the draft a moment after a change, and never two at once. */
export interface Writer {
  soon(): void
  /** Writes at once, if something has changed, and waits until all is written. */
  flush(): Promise<void>
}

/** So long after the first change: short enough to lose no word, long enough not to write at each key. */
const delay = 120

export function makeWriter(write: () => Promise<void>, clock: Pick<Clock, 'later'>): Writer {
  let callOff: (() => void) | undefined
  let running: Promise<void> | undefined
  let wanted = false

  const run = async (): Promise<void> => {
    while (wanted) {
      wanted = false
      await write()
    }
  }
  const start = (): Promise<void> => {
    callOff?.()
    callOff = undefined
    running ??= run().finally(() => {
      running = undefined
    })
    return running
  }
  return {
    soon() {
      wanted = true
      callOff ??= clock.later(delay, () => void start())
    },
    async flush() {
      while (wanted || running) await start()
    },
  }
}
