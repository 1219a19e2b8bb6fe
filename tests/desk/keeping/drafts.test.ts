import 'fake-indexeddb/auto'
import { randomUUID } from 'node:crypto'
import { describe, expect, it } from 'vitest'
import { bothDrafts } from '../../../src/desk/page/keeping/both-drafts.ts'
import { browserDrafts, tidy } from '../../../src/desk/page/keeping/browser-drafts.ts'
import { type Database, openDatabase } from '../../../src/desk/page/keeping/database.ts'
import type { Draft, Drafts } from '../../../src/desk/page/keeping/drafts.ts'
import { type Shelf, smallDrafts } from '../../../src/desk/page/keeping/small-drafts.ts'

const draft = (text: string, more: Partial<Draft> = {}): Draft => ({
  lesson: 'folder a/pier.md',
  store: 'folder a',
  name: 'pier',
  text,
  unsaved: true,
  turn: 1,
  changed: 1000,
  ...more,
})

/** A shelf with room for so many characters. */
function shelf(room = 100_000): Shelf {
  const items = new Map<string, string>()
  return {
    get length() {
      return items.size
    },
    key: (place) => [...items.keys()][place] ?? null,
    getItem: (key) => items.get(key) ?? null,
    setItem(key, value) {
      const others = [...items].reduce((sum, [name, kept]) => sum + (name === key ? 0 : kept.length), 0)
      if (others + value.length > room) throw new DOMException('full', 'QuotaExceededError')
      items.set(key, value)
    },
    removeItem: (key) => items.delete(key),
  }
}

const fresh = (): Promise<Database> => openDatabase(randomUUID())

describe.each([
  ['in the database', async (): Promise<Drafts> => browserDrafts(await fresh())],
  ['on the small shelf', async (): Promise<Drafts> => smallDrafts(shelf())],
  ['in both', async (): Promise<Drafts> => bothDrafts(browserDrafts(await fresh()), smallDrafts(shelf()))],
])('drafts %s', (_, make) => {
  it('come back as they were, newest first, and are gone when dropped', async () => {
    const drafts = await make()
    const one = draft('one', { state: { undo: ['a', 'b'] } })
    const other = draft('other', { lesson: 'new:1', changed: 2000 })
    expect([await drafts.put(one), await drafts.put(other)]).toEqual([true, true])
    expect(await drafts.get(one.lesson)).toEqual(one)
    expect(await drafts.all()).toEqual([other, one])
    await drafts.drop(one.lesson)
    expect(await drafts.all()).toEqual([other])
  })

  it('of a tab whose turn is over overwrite nothing', async () => {
    const drafts = await make()
    await drafts.put(draft('later', { turn: 2 }))
    expect(await drafts.put(draft('too late', { changed: 5000 }))).toBe(false)
    expect((await drafts.get(draft('').lesson))?.text).toBe('later')
  })
})

describe('what is written while the page is going', () => {
  it('counts when the database has not got it', async () => {
    const large = browserDrafts(await fresh())
    const drafts = bothDrafts({ ...large, putNow() {} }, smallDrafts(shelf()))
    await drafts.put(draft('half a'))
    drafts.putNow(draft('half a word', { changed: 1100 }))
    expect((await drafts.get(draft('').lesson))?.text).toBe('half a word')
    expect((await drafts.all()).map(({ text }) => text)).toEqual(['half a word'])
    await drafts.put(draft('half a word and more', { changed: 1200 }))
    expect((await drafts.get(draft('').lesson))?.text).toBe('half a word and more')
  })

  it('is the words alone when there is no room for undo', () => {
    const drafts = smallDrafts(shelf(300))
    drafts.putNow(draft('words', { state: 'x'.repeat(5000) }))
    return expect(drafts.get(draft('').lesson)).resolves.toEqual(draft('words'))
  })
})

describe('a browser without room', () => {
  it('gives up earlier texts and undo before it gives up words', async () => {
    const database = await fresh()
    const drafts = browserDrafts(database)
    const { lesson } = draft('')
    await drafts.keepEarlier(lesson, 'saved before', 'saved', 1)
    await drafts.keepEarlier(lesson, 'put aside', 'aside', 2)
    /** Full as long as a draft has its undo. */
    const full = new Proxy(database, {
      get(target, key) {
        if (key !== 'transaction') return Reflect.get(target, key).bind?.(target) ?? Reflect.get(target, key)
        return (name: 'drafts' | 'earlier', mode: 'readwrite') => {
          const change = target.transaction(name, mode)
          if (name !== 'drafts') return change
          const put = (value: Draft) =>
            value.state === undefined
              ? change.objectStore('drafts').put(value)
              : Promise.reject(new DOMException('full', 'QuotaExceededError'))
          let refused: Promise<unknown> = Promise.resolve()
          const store = {
            get: (key: string) => change.objectStore('drafts').get(key),
            put: (value: Draft) => {
              refused = put(value)
              return refused
            },
          }
          return {
            store,
            get done() {
              return Promise.all([change.done, refused])
            },
          }
        }
      },
    }) as Database
    expect(await browserDrafts(full).put(draft('words', { state: 'undo' }))).toBe(true)
    expect(await drafts.get(lesson)).toEqual(draft('words'))
    expect((await drafts.earlier(lesson)).map(({ text }) => text)).toEqual(['put aside'])
  })

  it('puts words on the small shelf when the database fails', async () => {
    const large = browserDrafts(await fresh())
    const failing = { ...large, put: () => Promise.reject(new DOMException('gone', 'InvalidStateError')) }
    const drafts = bothDrafts(failing, smallDrafts(shelf()))
    expect(await drafts.put(draft('words'))).toBe(true)
    expect((await drafts.get(draft('').lesson))?.text).toBe('words')
  })

  it('says so when nothing has room', async () => {
    const drafts = smallDrafts(shelf(10))
    await expect(drafts.put(draft('words'))).rejects.toThrow('full')
  })
})

describe('old drafts', () => {
  it('go when they are saved, and stay when they are not', async () => {
    const database = await fresh()
    const drafts = browserDrafts(database)
    const year = 365 * 24 * 60 * 60_000
    await drafts.put(draft('saved', { lesson: 'a', unsaved: false }))
    await drafts.put(draft('unsaved', { lesson: 'b' }))
    await drafts.put(draft('new', { lesson: 'c', unsaved: false, changed: year }))
    await tidy(database, year)
    expect((await drafts.all()).map(({ text }) => text)).toEqual(['new', 'unsaved'])
  })
})

describe('a shelf that others write on too', () => {
  it('is read with care', async () => {
    const mixed = shelf()
    mixed.setItem('foldlore draft broken', '{')
    mixed.setItem('something else', 'x')
    mixed.setItem('foldlore draft odd', '42')
    expect(await smallDrafts(mixed).all()).toEqual([])
  })
})
