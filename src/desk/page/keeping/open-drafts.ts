import { bothDrafts } from './both-drafts.ts'
import { browserDrafts, tidy } from './browser-drafts.ts'
import { type Database, openDatabase } from './database.ts'
import type { Drafts } from './drafts.ts'
import { type Shelf, smallDrafts } from './small-drafts.ts'

/** Where drafts go in this browser, and the database, if it opens. */
export interface Opened {
  readonly drafts: Drafts
  readonly database?: Database
}

/** As long as a database may take to open; one that is blocked may never do. */
const patience = 4000

/** Opens what this browser has: its database, else the small shelf, else drafts that fail and say so. */
export async function openDrafts(now: number, open: () => Promise<Database> = openDatabase): Promise<Opened> {
  const small = smallDrafts(shelf())
  try {
    const database = await Promise.race([open(), late()])
    await tidy(database, now)
    return { drafts: bothDrafts(browserDrafts(database), small), database }
  } catch {
    return { drafts: small }
  }
}

const late = (): Promise<never> =>
  new Promise((_, reject) => setTimeout(() => reject(new Error('The database does not open')), patience))

function shelf(): Shelf {
  try {
    return globalThis.localStorage
  } catch {
    return noShelf
  }
}

/** Where even the small shelf is forbidden: reading finds nothing, writing fails. */
const noShelf: Shelf = {
  length: 0,
  key: () => null,
  getItem: () => null,
  setItem() {
    throw new Error('This browser keeps nothing')
  },
  removeItem() {},
}
