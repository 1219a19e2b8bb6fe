import { type ChildProcess, spawn } from 'node:child_process'
import { once } from 'node:events'
import { readdirSync, readFileSync, rmSync, statSync, utimesSync, writeFileSync } from 'node:fs'
import { request } from 'node:http'
import { join } from 'node:path'
import { setTimeout as wait } from 'node:timers/promises'
import { build } from 'esbuild'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { isDraft } from '../../../src/desk/server/save-whole.ts'
import { versionOf } from '../../../src/desk/server/text-file.ts'
import { someDesk, someFolder } from './desk.ts'

const built = `node_modules/.cache/foldlore/serve-folder-${process.pid}`
const program = `${built}/serve-folder.js`
beforeAll(async () => {
  await build({
    entryPoints: ['tests/desk/server/serve-folder.ts'],
    bundle: true,
    platform: 'node',
    format: 'esm',
    packages: 'external',
    splitting: true,
    outdir: built,
    logLevel: 'warning',
  })
})

afterAll(() => rmSync(built, { recursive: true, force: true }))

interface Running {
  readonly child: ChildProcess
  readonly port: number
  readonly token: string
}

async function start(folder: string): Promise<Running> {
  const child = spawn(process.execPath, [program, folder], { stdio: ['ignore', 'pipe', 'inherit'] })
  const [line] = (await once(child.stdout, 'data')) as [Buffer]
  const [port = '', token = ''] = line.toString().trim().split(' ')
  return { child, port: Number(port), token }
}

/** Saves; gives the status, or undefined when the desk dies first. */
function save({ port, token }: Running, text: string, over: string): Promise<number | undefined> {
  return new Promise((done) => {
    const headers = { authorization: `Bearer ${token}`, 'content-type': 'application/json' }
    const asked = request(
      { host: '127.0.0.1', port, path: '/api/file?path=a.md', method: 'PUT', headers, agent: false },
      (response) => {
        response.resume()
        response.on('error', () => done(undefined))
        response.on('end', () => done(response.statusCode))
      },
    )
    asked.on('error', () => done(undefined))
    asked.end(JSON.stringify({ text, over }))
  })
}

const rounds = 12

/** A text of nearly the most that a lesson may have, so that writing it takes long, with its end at its end. */
const textOf = (round: number): string => `${`${round} `.repeat(380_000)}end ${round}`

/** Waits until something besides the file lies in the folder, or the file is another one. */
async function written(folder: string): Promise<void> {
  const look = () => JSON.stringify([readdirSync(folder), statSync(join(folder, 'a.md')).mtimeMs])
  const before = look()
  while (look() === before) await new Promise(setImmediate)
}

test('killed in the middle of a save again and again, the file is the old text or the new one, and whole', {
  timeout: 120_000,
}, async () => {
  const folder = someFolder()
  const file = join(folder, 'a.md')
  let old = textOf(1000)
  writeFileSync(file, old)
  // How long a save takes on this machine now: a kill comes at any moment of it.
  const first = await start(folder)
  const began = performance.now()
  const next = textOf(1001)
  expect(await save(first, next, versionOf(Buffer.from(old)))).toBe(200)
  const takes = performance.now() - began
  old = next
  first.child.kill('SIGKILL')
  const ends = { unanswered: 0, old: 0, new: 0, drafts: 0 }
  for (let round = 0; round < rounds; round++) {
    const running = await start(folder)
    const gone = once(running.child, 'exit')
    const text = textOf(2000 + round)
    const saving = save(running, text, versionOf(Buffer.from(old)))
    // By turns at any moment, and as soon as something is being written.
    if (round % 2 === 0) await wait((takes * (round + 0.5)) / rounds)
    else await Promise.race([saving, written(folder)])
    running.child.kill('SIGKILL')
    const status = await saving
    await gone
    const now = readFileSync(file, 'utf8')
    expect([now === old, now === text].filter((one) => one)).toEqual([true])
    // What was said to be saved is saved.
    if (status !== undefined) expect([status, now === text]).toEqual([200, true])
    else ends.unanswered++
    ends[now === old ? 'old' : 'new']++
    ends.drafts = readdirSync(folder).filter(isDraft).length
    old = now
  }
  // Enough of the kills came before the answer, and in the middle of writing, for this to mean something.
  expect(ends.unanswered).toBeGreaterThan(2)
  expect(ends.drafts).toBeGreaterThan(0)
  expect(ends.old).toBeGreaterThan(0)

  // What the saves that were cut off have left is hidden, and swept up by a later start, but not while it is new.
  const drafts = readdirSync(folder).filter((name) => name !== 'a.md')
  expect(drafts.every(isDraft)).toBe(true)
  const [older = '', ...newer] = drafts
  writeFileSync(join(folder, older), 'cut off')
  const longAgo = Date.now() / 1000 - 3600
  utimesSync(join(folder, older), longAgo, longAgo)
  await someDesk(folder)
  for (let i = 0; i < 100 && readdirSync(folder).includes(older); i++) await wait(20)
  expect(readdirSync(folder).sort()).toEqual([...newer, 'a.md'].sort())
})
