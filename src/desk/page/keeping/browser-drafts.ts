import type { Database } from './database.ts'
import type { Draft, Drafts, Earlier } from './drafts.ts'
import { thinned } from './thinning.ts'

/** Drafts that have been saved stay for the sake of undo; so long, in milliseconds, and so many. */
const longest = 90 * 24 * 60 * 60_000
const most = 60

/** Drafts in the browser's database. */
export function browserDrafts(database: Database): Drafts {
  return {
    get: (lesson) => database.get('drafts', lesson),
    async put(draft) {
      try {
        return await put(database, draft)
      } catch (error) {
        if (!isFull(error)) throw error
        // The newest words matter more than what they were before.
        await makeRoom(database)
        const { state: _, ...bare } = draft
        return put(database, bare)
      }
    },
    putNow: (draft) => void put(database, draft).catch(() => {}),
    drop: (lesson) => database.delete('drafts', lesson),
    async all() {
      const all = await database.getAll('drafts')
      return all.sort((a, b) => b.changed - a.changed)
    },
    async earlier(lesson) {
      const all = await database.getAllFromIndex('earlier', 'lesson', lesson)
      return (all as Earlier[]).sort((a, b) => b.changed - a.changed || b.id - a.id)
    },
    keepEarlier: (lesson, text, why, now) => keepEarlier(database, { lesson, text, why, changed: now }),
    forget: (id) => database.delete('earlier', id),
    async rename(from, to) {
      const change = database.transaction('earlier', 'readwrite')
      for await (const cursor of change.store.index('lesson').iterate(from))
        await cursor.update({ ...cursor.value, lesson: to })
      await change.done
    },
  }
}

/** One transaction: what is there is compared and written over, or left. */
async function put(database: Database, draft: Draft): Promise<boolean> {
  const change = database.transaction('drafts', 'readwrite')
  const before = await change.store.get(draft.lesson)
  const late = before !== undefined && before.turn > draft.turn
  if (!late) void change.store.put(draft).catch(() => {})
  await change.done
  return !late
}

async function keepEarlier(database: Database, version: Omit<Earlier, 'id'>): Promise<void> {
  const change = database.transaction('earlier', 'readwrite')
  const before = (await change.store.index('lesson').getAll(version.lesson)) as Earlier[]
  const newest = before.reduce<Earlier | undefined>(
    (a, b) => (a && a.changed >= b.changed ? a : b),
    undefined,
  )
  if (newest?.text !== version.text) {
    const id = await change.store.add(version)
    for (const old of thinned([...before, { ...version, id }], version.changed))
      await change.store.delete(old)
  }
  await change.done
}

/** Takes out what was kept while writing and lies in a folder or a draft by now. */
async function makeRoom(database: Database): Promise<void> {
  const change = database.transaction('earlier', 'readwrite')
  for await (const cursor of change.store) if (cursor.value.why !== 'aside') await cursor.delete()
  await change.done
}

/** Takes out drafts of old that lie in a folder. To be called once, when the page begins. */
export async function tidy(database: Database, now: number): Promise<void> {
  const saved = (await database.getAll('drafts')).filter((draft) => !draft.unsaved)
  saved.sort((a, b) => b.changed - a.changed)
  for (const [place, draft] of saved.entries())
    if (place >= most || now - draft.changed > longest) await database.delete('drafts', draft.lesson)
}

const isFull = (error: unknown): boolean => (error as { name?: string } | null)?.name === 'QuotaExceededError'
