/** Tells the time, and calls again. A test holds one of its own in its hands. */
export interface Clock {
  /** Milliseconds since some day. */
  readonly now: () => number
  /** Calls so often, until the page is closed. */
  readonly every: (milliseconds: number, call: () => void) => void
}

/** The clock of the computer: it goes on while a laptop sleeps, as the class does. */
export const computerClock: Clock = {
  // biome-ignore lint/style/noRestrictedGlobals: This is the one clock of the page; all else is handed it.
  now: () => Date.now(),
  every: (milliseconds, call) => {
    window.setInterval(call, milliseconds)
  },
}
