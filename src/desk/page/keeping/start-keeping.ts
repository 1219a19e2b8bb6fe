import { absentStore } from './absent-store.ts'
import { browserTabs, noTabs } from './browser-tabs.ts'
import type { Clock, LastSeen, Tools } from './core.ts'
import type { Database } from './database.ts'
import type { Keepable, Keeper } from './keeper.ts'
import { makeKeeper } from './make-keeper.ts'
import { openDrafts } from './open-drafts.ts'
import type { Post } from './post.ts'
import type { Store } from './store.ts'
import type { Tabs } from './tabs.ts'
import { troubleOf } from './trouble.ts'

/** The keeper of this page, and the database of this browser, if it has one. */
export interface Keeping {
  readonly keeper: Keeper
  readonly database?: Database
}

/**
 * Starts the keeper in a browser. It writes the draft when the page is hidden or left, and looks at the file again
 * when it is looked at again.
 *
 * @param store makes the first store, with the database if there is one.
 */
export async function startKeeping(
  page: Keepable,
  store: (database: Database | undefined) => Store | Promise<Store>,
  settle?: (database: Database) => Tools['settle'],
): Promise<Keeping> {
  const { drafts, database } = await openDrafts(Date.now())
  const bringing = database && settle?.(database)
  const first = await storeOrNone(store, database, page)
  const keeper = makeKeeper({
    store: first,
    drafts,
    tabs: tabsHere(),
    page,
    clock,
    lastSeen,
    newName: () => crypto.randomUUID(),
    ...(bringing && { settle: bringing }),
  })
  if (!database)
    page.say('This browser keeps words by itself, but no pictures and no earlier versions. Save often.')
  addEventListener('pagehide', () => keeper.leaving())
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'hidden') keeper.leaving()
    else void keeper.lookAgain()
  })
  addEventListener('focus', () => void keeper.lookAgain())
  addEventListener('online', () => void keeper.lookAgain())
  // Asks the browser not to throw drafts away when its disk gets full. It may say no.
  void navigator.storage?.persist?.().catch(() => {})
  return { keeper, ...(database && { database }) }
}

/** A folder that cannot be opened does not keep anyone from their drafts. */
async function storeOrNone(
  store: (database: Database | undefined) => Store | Promise<Store>,
  database: Database | undefined,
  page: Keepable,
): Promise<Store> {
  try {
    return await store(database)
  } catch (error) {
    page.say(`The folder cannot be opened: ${troubleOf(error).words}. What was kept in this browser is here.`)
    return absentStore('none')
  }
}

const clock: Clock = {
  now: () => Date.now(),
  later(milliseconds, work) {
    const timer = setTimeout(work, milliseconds)
    return () => clearTimeout(timer)
  },
}

const tabsHere = (): Tabs =>
  navigator.locks && 'BroadcastChannel' in globalThis
    ? browserTabs(navigator.locks, () => new BroadcastChannel('foldlore lessons') as unknown as Post)
    : noTabs

const lastKey = 'foldlore lesson'

/** In the memory of the tab, which a reload and a crash leave alone. */
const lastSeen: LastSeen = {
  get() {
    try {
      return sessionStorage.getItem(lastKey) ?? undefined
    } catch {
      return undefined
    }
  },
  set(lesson) {
    try {
      if (lesson === undefined) sessionStorage.removeItem(lastKey)
      else sessionStorage.setItem(lastKey, lesson)
    } catch {
      // Without it, a tab goes on with the newest lesson.
    }
  },
}
