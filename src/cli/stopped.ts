import process from 'node:process'

const signals = ['SIGINT', 'SIGTERM', 'SIGHUP'] as const

/** Waits for Ctrl-C or for the end of the session. Pressed a second time, Ctrl-C ends the program at once. */
export function stopped(): Promise<void> {
  return new Promise((done) => {
    const stop = (): void => {
      for (const signal of signals) process.off(signal, stop)
      done()
    }
    for (const signal of signals) process.on(signal, stop)
  })
}
