import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { setTimeout as wait } from 'node:timers/promises'
import { beforeAll, expect, test, vi } from 'vitest'
import { serverAt, serverStore } from '../../../src/desk/page/keeping/server-store.ts'
import { type Store, StoreTrouble } from '../../../src/desk/page/keeping/store.ts'
import { savingDisk } from '../../../src/desk/server/disk.ts'
import type { OpenDesk } from '../../../src/desk/server/serve.ts'
import { small } from '../../cli/lessons.ts'
import { openPdf, pageTexts } from '../../publish/pdf-reading.ts'
import { someDesk, someFolder } from './desk.ts'

const folder = someFolder()
const at = (path: string) => join(folder, path)
const storeOf = ({ port, token }: OpenDesk): Promise<Store> =>
  serverStore({ origin: `http://127.0.0.1:${port}`, token })
const troubleIn = async (work: Promise<unknown>) => {
  const error = await work.then(
    () => undefined,
    (thrown: unknown) => thrown,
  )
  expect(error).toBeInstanceOf(StoreTrouble)
  const { kind, message } = error as StoreTrouble
  return [kind, message]
}

let desk: OpenDesk
let store: Store
beforeAll(async () => {
  writeFileSync(at('low-tide.md'), small)
  desk = await someDesk(folder)
  store = await storeOf(desk)
})

test('the page knows its server by its own address and the word behind it', () => {
  const word = 'a'.repeat(43)
  const here = { protocol: 'http:', hostname: '127.0.0.1', origin: 'http://127.0.0.1:3653', hash: `#${word}` }
  expect(serverAt(here)).toEqual({ origin: 'http://127.0.0.1:3653', token: word })
  expect(serverAt({ ...here, hostname: 'localhost' })).toBeDefined()
  for (const other of [
    { hash: '' },
    { hash: '#step-3' },
    { hostname: 'harbour.example' },
    { protocol: 'https:' },
    { protocol: 'file:', hostname: '' },
  ])
    expect(serverAt({ ...here, ...other })).toBeUndefined()
})

test('the folder has its name, and is told from another of that name', async () => {
  const other = await storeOf(await someDesk(someFolder()))
  const again = await storeOf(await someDesk(folder))
  expect([store.kind, store.name]).toEqual(['server', folder.split('/').at(-1)])
  expect([store.id === other.id, store.id === again.id]).toEqual([false, true])
})

test('lessons are listed, read and saved', async () => {
  expect(await store.list()).toMatchObject([{ path: 'low-tide.md', title: 'Low tide', kind: 'lesson' }])
  const { text, version } = await store.read('low-tide.md')
  expect(text).toBe(small)
  const saved = await store.save('low-tide.md', `${text}\nMore.\n`, version)
  expect(saved).not.toHaveProperty('other')
  expect(readFileSync(at('low-tide.md'), 'utf8')).toBe(`${small}\nMore.\n`)
  expect(await store.read('low-tide.md')).toMatchObject(saved)
})

test('a file that another program has changed comes back instead of being overwritten', async () => {
  writeFileSync(at('both.md'), 'One')
  const { version } = await store.read('both.md')
  writeFileSync(at('both.md'), 'Theirs\r\n')
  const saved = await store.save('both.md', 'Mine', version)
  expect(saved).toMatchObject({ other: { path: 'both.md', text: 'Theirs\n' } })
  expect(await store.save('both.md', 'Mine', undefined)).toMatchObject({ other: { text: 'Theirs\n' } })
  expect(readFileSync(at('both.md'), 'utf8')).toBe('Theirs\r\n')
  const { other } = saved as { other: { version: string } }
  await store.save('both.md', 'Mine\nnow\n', other.version)
  expect(readFileSync(at('both.md'), 'utf8')).toBe('Mine\r\nnow\r\n')
})

test('ends of lines and the byte order mark of a file stay, also for a page that comes back with a draft', async () => {
  writeFileSync(at('dos.md'), '\ufeffOne\r\nTwo\r\n')
  const { text, version } = await store.read('dos.md')
  expect(text).toBe('One\nTwo\n')
  const back = await storeOf(desk)
  await back.save('dos.md', 'One\nAnd a half\nTwo\n', version)
  expect(readFileSync(at('dos.md'), 'utf8')).toBe('\ufeffOne\r\nAnd a half\r\nTwo\r\n')
})

test('a picture is stored and shown', async () => {
  const png = Buffer.from(
    'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mP8z8BQDwAEhQGAhKmMIQAAAABJRU5ErkJggg==',
    'base64',
  )
  const address = await store.addPicture(
    'low-tide.md',
    'Sea Gull.png',
    new Blob([png], { type: 'image/png' }),
  )
  expect(address).toBe('sea-gull.png')
  expect(await store.picture('low-tide.md', address)).toBe(`data:image/png;base64,${png.toString('base64')}`)
  expect(await store.picture('low-tide.md', 'none.png')).toBeUndefined()
  expect(await store.picture('low-tide.md', '../../etc/passwd')).toBeUndefined()
  expect(await troubleIn(store.addPicture('low-tide.md', 'a.png', new Blob(['words'])))).toEqual([
    'refused',
    'a.png is no picture that can be printed. Save it as PNG, JPEG, WebP, GIF or SVG',
  ])
})

test('a print comes as a PDF, or the reason why not', async () => {
  const wish = {
    path: 'low-tide.md',
    text: small,
    what: 'handout',
    paper: 'a4',
    theme: 'step-sheet',
  } as const
  const { pdf } = (await store.print?.(wish)) ?? {}
  expect(pdf?.type).toBe('application/pdf')
  const texts = await pageTexts(await openPdf(new Uint8Array((await pdf?.arrayBuffer()) ?? [])))
  expect(texts.join(' ')).toContain('Low tide')
  expect(
    await troubleIn(store.print?.({ ...wish, text: small.replace('{mat.size}', '{mat.sizes}') }) ?? wait(0)),
  ).toEqual([
    'refused',
    'the lesson has errors, so its numbers cannot be relied on. Cure what is marked in the lesson, then print again',
  ])
})

test('a print tells that a lesson is too long for the one page of its theme', async () => {
  const long = { path: 'long.md', what: 'handout', paper: 'a4', theme: 'card' } as const
  const body = `${small}\n:::caution\n${'Keep the other hand behind the blade. '.repeat(250)}\n:::\n`
  const made = await store.print?.({ ...long, text: body })
  expect(made?.notes).toEqual([expect.stringMatching(/goes on to page \d.*the theme `booklet`\.$/)])
  expect((await store.print?.({ ...long, text: small }))?.notes).toEqual([])
})

test('what went wrong is told by kind and in words', async () => {
  expect(await troubleIn(store.read('none.md'))).toEqual([
    'missing',
    'there is no none.md in the folder. It may have been moved or renamed: look in the folder',
  ])
  expect((await troubleIn(store.read('../a.md')))[0]).toBe('refused')
  const full = { ...savingDisk, create: () => Promise.reject(Object.assign(new Error(), { code: 'ENOSPC' })) }
  const other = await storeOf(await someDesk(someFolder(), { disk: full }))
  expect(await troubleIn(other.save('a.md', 'New', undefined))).toEqual([
    'full',
    'the disk is full. Make some room and try again',
  ])
})

test('a desk that is closed, and one that is started anew, are told apart', async () => {
  const own = await someDesk(someFolder())
  const before = await storeOf(own)
  await own.close()
  expect(await troubleIn(before.list())).toEqual([
    'away',
    'the desk on this computer does not answer. It may have been closed',
  ])
  await someDesk(someFolder(), { port: own.port })
  expect(await troubleIn(before.list())).toEqual([
    'refused',
    'this page was opened before the desk was started anew. Open the address that foldlore desk shows when it starts',
  ])
})

test('changes by another program are heard, those that were made here are not, and not after the end', async () => {
  const own = someFolder()
  const other = await storeOf(await someDesk(own))
  const heard: string[] = []
  const stop = other.watch((path) => heard.push(path))
  await listening(own, heard)
  await other.save('mine.md', 'Mine', undefined)
  writeFileSync(join(own, 'theirs.md'), 'Theirs')
  for (let i = 0; i < 400 && !heard.includes('theirs.md'); i++) await wait(20)
  stop()
  expect([heard.includes('theirs.md'), heard.includes('mine.md')]).toEqual([true, false])
  const count = heard.length
  writeFileSync(join(own, 'late.md'), 'Late')
  await wait(400)
  expect(heard).toHaveLength(count)
})

/** Writes files until one of them is heard of: then somebody listens. */
async function listening(own: string, heard: readonly string[]): Promise<void> {
  for (let i = 0; i < 400 && heard.length === 0; i++) {
    if (i % 20 === 0) writeFileSync(join(own, 'first.md'), `${i}`)
    await wait(20)
  }
}

test('a page that could not listen for a while looks again at what it knows', async () => {
  const own = someFolder()
  writeFileSync(join(own, 'known.md'), 'One')
  const { fetch } = globalThis
  const line = new AbortController()
  const spy = vi.spyOn(globalThis, 'fetch')
  try {
    spy.mockImplementation((input, init) =>
      fetch(input, {
        ...init,
        signal: AbortSignal.any([line.signal, ...(init?.signal ? [init.signal] : [])]),
      }),
    )
    const other = await storeOf(await someDesk(own))
    await other.read('known.md')
    const heard: string[] = []
    const stop = other.watch((path) => heard.push(path))
    await listening(own, heard)
    // The line is cut, and the file changes before there is another one.
    line.abort()
    writeFileSync(join(own, 'known.md'), 'Two')
    await wait(300)
    heard.length = 0
    spy.mockImplementation(fetch)
    for (let i = 0; i < 400 && !heard.includes('known.md'); i++) await wait(20)
    stop()
    expect(heard).toContain('known.md')
  } finally {
    spy.mockRestore()
  }
})

test('a page from an earlier start knows its folder still, and says what is wrong with whatever it is asked', async () => {
  const kept = new Map<string, string>()
  const notes = {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, text: string) => void kept.set(key, text),
  }
  const own = await someDesk(someFolder())
  const origin = `http://127.0.0.1:${own.port}`
  const before = await serverStore({ origin, token: own.token }, notes)
  const stale = await serverStore({ origin, token: 'a'.repeat(43) }, notes)
  expect([stale.name, stale.id]).toEqual([before.name, before.id])
  expect((await troubleIn(stale.list()))[0]).toBe('refused')
  await own.close()
  const gone = await serverStore({ origin, token: own.token }, notes)
  expect([gone.id, (await troubleIn(gone.read('a.md')))[0]]).toEqual([before.id, 'away'])
  const blocked = { getItem: () => JSON.parse('{'), setItem: () => JSON.parse('{') }
  expect((await serverStore({ origin, token: own.token }, blocked)).name).toBe('the folder of the desk')
})
