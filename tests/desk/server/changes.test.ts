import { createHash } from 'node:crypto'
import { mkdirSync, renameSync, rmSync, writeFileSync } from 'node:fs'
import { request } from 'node:http'
import { join } from 'node:path'
import { setTimeout as wait } from 'node:timers/promises'
import { expect, test } from 'vitest'
import { watchTexts } from '../../../src/desk/server/changes.ts'
import type { OpenDesk } from '../../../src/desk/server/serve.ts'
import { put, someDesk, someFolder } from './desk.ts'

const sha = (text: string) => createHash('sha256').update(text).digest('hex')

/** What the stream says, line by line; the first comes when it listens. */
async function listen({ port, token }: OpenDesk) {
  const lines: string[] = []
  let ended = false
  const asked = request(
    {
      host: '127.0.0.1',
      port,
      path: '/api/changes',
      headers: { authorization: `Bearer ${token}` },
      agent: false,
    },
    (response) => {
      response.on('data', (part: Buffer) => lines.push(...part.toString().split('\n').slice(0, -1)))
      response.on('close', () => {
        ended = true
      })
    },
  )
  asked.on('error', () => {})
  asked.end()
  const until = async (done: () => boolean) => {
    for (let i = 0; i < 400 && !done(); i++) await wait(20)
    expect(done()).toBe(true)
  }
  await until(() => lines[0] === '')
  const told = () =>
    lines.filter((line) => line !== '').map((line) => JSON.parse(line) as { path: string; version?: string })
  /** Waits for a change. */
  const hear = async (path: string, version?: string) => {
    await until(() => told().some((change) => change.path === path && change.version === version))
  }
  return { told, hear, until, ended: () => ended, leave: () => asked.destroy() }
}

test('changes by other programs are told: a new file, another text, a file that is gone, one in a new folder', async () => {
  const folder = someFolder()
  writeFileSync(join(folder, 'a.md'), 'Old')
  const { hear, told, leave } = await listen(await someDesk(folder))
  writeFileSync(join(folder, 'a.md'), 'New')
  await hear('a.md', sha('New'))
  mkdirSync(join(folder, 'sea/gulls'), { recursive: true })
  writeFileSync(join(folder, 'sea/gulls/b.yaml'), 'people: 3')
  await hear('sea/gulls/b.yaml', sha('people: 3'))
  writeFileSync(join(folder, 'sea/gulls/b.yaml'), 'people: 4')
  await hear('sea/gulls/b.yaml', sha('people: 4'))
  writeFileSync(join(folder, 'other.tmp'), 'As an editor saves')
  renameSync(join(folder, 'other.tmp'), join(folder, 'a.md'))
  await hear('a.md', sha('As an editor saves'))
  rmSync(join(folder, 'a.md'))
  await hear('a.md')
  for (const path of ['.hidden.md', 'notes.txt']) writeFileSync(join(folder, path), 'Words')
  writeFileSync(join(folder, 'last.md'), 'Last')
  await hear('last.md', sha('Last'))
  expect([...new Set(told().map(({ path }) => path))].sort()).toEqual(['a.md', 'last.md', 'sea/gulls/b.yaml'])
  leave()
})

test('many changes at once are told once', async () => {
  const folder = someFolder()
  const { hear, told, leave } = await listen(await someDesk(folder))
  for (let i = 0; i < 200; i++) writeFileSync(join(folder, 'a.md'), `Text ${i}`)
  await hear('a.md', sha('Text 199'))
  expect(told().length).toBeLessThan(20)
  leave()
})

test('a program that writes all the time does not put the telling off', async () => {
  const folder = someFolder()
  const { hear, leave } = await listen(await someDesk(folder))
  const busy = setInterval(() => writeFileSync(join(folder, 'log.txt'), String(Math.random())), 20)
  try {
    writeFileSync(join(folder, 'a.md'), 'New')
    await hear('a.md', sha('New'))
  } finally {
    clearInterval(busy)
  }
  leave()
})

test('a save of the desk is told with the version that it gave', async () => {
  const folder = someFolder()
  const desk = await someDesk(folder)
  const { hear, leave } = await listen(desk)
  const { version } = (await put(desk, 'a.md', 'Mine')).json()
  await hear('a.md', version)
  leave()
})

test('the stream ends when the desk is closed, and the desk does not wait for who listens', async () => {
  const desk = await someDesk(someFolder())
  const { until, ended } = await listen(desk)
  await desk.close()
  await until(ended)
})

test('nothing is watched any more when nobody listens', async () => {
  const folder = someFolder()
  const told: string[] = []
  let ready: () => void = () => {}
  const begun = new Promise<void>((done) => {
    ready = done
  })
  const stop = watchTexts(folder, ({ path }) => told.push(path), { ready })
  await begun
  stop()
  writeFileSync(join(folder, 'a.md'), 'New')
  await wait(400)
  expect(told).toEqual([])
})

test('a disk that tells nothing of changes is looked at from time to time', async () => {
  const folder = someFolder()
  const told: string[] = []
  let ready: () => void = () => {}
  const begun = new Promise<void>((done) => {
    ready = done
  })
  const watch = () => {
    throw new Error('no room for more watches')
  }
  const stop = watchTexts(folder, ({ path }) => told.push(path), { ready, atLatest: 100, watch })
  await begun
  await wait(200)
  writeFileSync(join(folder, 'a.md'), 'New')
  for (let i = 0; i < 100 && told.length === 0; i++) await wait(20)
  stop()
  expect(told).toEqual(['a.md'])
})
