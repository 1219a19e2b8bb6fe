import { ask, type Letter, type Post } from './post.ts'
import type { Handed, Hears, Seat, Tabs } from './tabs.ts'

/** As long as a tab may take to answer, in milliseconds. A tab that sleeps does not. */
const patience = 1500

/** The tabs of this browser, which tell each other who writes by locks and what is written by letters. */
export function browserTabs(locks: LockManager, channel: () => Post): Tabs {
  const name = (lesson: string): string => `foldlore lesson ${lesson}`
  return {
    sit: (lesson, hears) => sit(locks, channel(), name(lesson), hears),
    free: (lesson) => locks.request(name(lesson), { ifAvailable: true }, async (lock) => lock !== null),
  }
}

/** Where a browser has no locks, each tab writes; saving still overwrites nothing. */
export const noTabs: Tabs = {
  sit: async () => ({ writes: true, tell() {}, takeOver: async () => undefined, leave() {} }),
  free: async () => true,
}

async function sit(locks: LockManager, post: Post, lesson: string, hears: Hears): Promise<Seat> {
  const self = crypto.randomUUID()
  let writes = false
  let lookers = false
  let left = false
  let settled = false
  let holder: object | undefined
  let shown: Handed | undefined
  /** Ends the wait for the lock. */
  let stopWaiting = new AbortController()
  /** Lets go of the lock. */
  let letGo = (): void => {}

  /** Holds the lock until `letGo`. Gives whether it was got. */
  const hold = (options: LockOptions, got: () => void): Promise<boolean> =>
    new Promise((resolve) => {
      const mine = {}
      const held = locks.request(lesson, options, (lock) => {
        if (!lock || left) {
          resolve(false)
          return undefined
        }
        writes = true
        holder = mine
        got()
        resolve(true)
        return new Promise<void>((done) => {
          letGo = done
        })
      })
      held.catch(() => {
        resolve(false)
        if (holder !== mine) return
        // Another tab took the lock. If it had asked before, this one looks already.
        const late = writes
        holder = undefined
        writes = false
        if (left) return
        if (late) {
          hears.lost(true)
          post.postMessage({ kind: 'ask', lesson, from: self })
        }
        void wait()
      })
    })

  /** Waits until the one who writes is gone. */
  const wait = (): Promise<boolean> => {
    stopWaiting = new AbortController()
    return hold({ signal: stopWaiting.signal }, () => {
      lookers = true
      if (settled) hears.won()
    })
  }

  post.onmessage = ({ data }: { readonly data: Letter }) => {
    if (data.lesson !== lesson || data.from === self || left) return
    if (data.kind === 'ask' && writes) {
      lookers = true
      const now = hears.now()
      if (now) post.postMessage({ kind: 'now', lesson, from: self, handed: now })
    } else if (data.kind === 'now' && !writes) {
      shown = data.handed
      if (settled) hears.changed(data.handed)
    } else if (data.kind === 'give' && writes) {
      const now = hears.now()
      writes = false
      if (now) post.postMessage({ kind: 'given', lesson, from: self, to: data.from, handed: now })
      lookers = true
      // The lock is not let go of: the other tab takes it, so that no third one gets it in between.
      hears.lost(false)
    }
  }

  if (!(await hold({ ifAvailable: true }, () => {}))) {
    // Either someone writes, and answers, or a page that is going has not let go yet, and soon does.
    const won = wait()
    const answer = ask(post, { kind: 'ask', lesson, from: self }, 'now', patience)
    await Promise.race([won, answer])
  }
  settled = true

  return {
    get writes() {
      return writes
    },
    ...(shown && { shown }),
    tell(handed) {
      if (writes && lookers) post.postMessage({ kind: 'now', lesson, from: self, handed })
    },
    async takeOver() {
      if (writes) return undefined
      const answer = await ask(post, { kind: 'give', lesson, from: self }, 'given', patience)
      stopWaiting.abort()
      lookers = true
      if (!writes) await hold({ steal: true }, () => {})
      return answer?.handed
    },
    leave() {
      left = true
      writes = false
      stopWaiting.abort()
      letGo()
      post.close()
    },
  }
}
