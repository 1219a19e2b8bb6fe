import { randomUUID } from 'node:crypto'
import { open, readFile, rename, rm, stat, utimes } from 'node:fs/promises'
import { hostname } from 'node:os'
import { join } from 'node:path'
import process from 'node:process'
import { setTimeout as wait } from 'node:timers/promises'
import { OutsideError } from '../../publish/problems.ts'
import { plainError } from '../../publish/write.ts'

/** What lies in a folder while a library is being printed into it. */
export const lockName = '.foldlore-library.lock'

/** In ms: how often the holder of a lock says that it is there, and after which silence it is taken for gone. */
const beat = { every: 2000, silent: 30_000 } as const

/** A folder that nobody else prints a library into. */
export interface Lock {
  /** Aborted when another process has taken it over, because this one was silent for too long. */
  readonly lost: AbortSignal
  readonly release: () => Promise<void>
}

interface Holder {
  readonly pid: number
  readonly host: string
  readonly token: string
}

/**
 * Takes a folder for this process alone. A lock whose process has ended, or that has been silent for long, is taken over.
 *
 * @throws OutsideError when another process holds it, or nothing can be written there.
 */
export async function takeLock(folder: string, timing: typeof beat = beat): Promise<Lock> {
  const path = join(folder, lockName)
  const own: Holder = { pid: process.pid, host: hostname(), token: randomUUID() }
  if (!(await placed(path, own))) {
    // One that is just being written says nothing yet.
    const held = (await holderOf(path)) ?? (await wait(100).then(() => holderOf(path)))
    if (held && !(await isStale(path, held, timing.silent))) throw taken(held)
    await putAside(path, own.token)
    if (!(await placed(path, own))) throw taken(await holderOf(path))
    // Two that found the same stale lock: the later one has it.
    await wait(50)
  }
  if ((await holderOf(path))?.token !== own.token) throw taken(await holderOf(path))
  const lost = new AbortController()
  const timer = setInterval(async () => {
    if ((await holderOf(path))?.token !== own.token) lost.abort()
    else await utimes(path, new Date(), new Date()).catch(() => {})
  }, timing.every)
  timer.unref()
  return {
    lost: lost.signal,
    async release() {
      clearInterval(timer)
      if ((await holderOf(path))?.token === own.token) await rm(path, { force: true })
    },
  }
}

/** Writes the lock where none is; false when there is one. */
async function placed(path: string, holder: Holder): Promise<boolean> {
  try {
    const file = await open(path, 'wx')
    try {
      await file.writeFile(JSON.stringify(holder))
    } catch (error) {
      await rm(path, { force: true })
      throw error
    } finally {
      await file.close()
    }
    return true
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'EEXIST') return false
    throw plainError(error, `Cannot write \`${path}\``)
  }
}

/** Who holds a lock; undefined when nobody does, or it was cut off while it was written. */
async function holderOf(path: string): Promise<Holder | undefined> {
  try {
    const { pid, host, token } = JSON.parse(await readFile(path, 'utf8'))
    return { pid: Number(pid), host: String(host), token: String(token) }
  } catch {
    return undefined
  }
}

/** Only one process can move a file away: the others find none. */
async function putAside(path: string, token: string): Promise<void> {
  const aside = `${path}.${token}`
  await rename(path, aside).catch(() => {})
  await rm(aside, { force: true })
}

async function isStale(path: string, { pid, host }: Holder, silent: number): Promise<boolean> {
  if (host === hostname() && !isRunning(pid)) return true
  const touched = await stat(path).then(
    ({ mtimeMs }) => mtimeMs,
    () => 0,
  )
  return Date.now() - touched > silent
}

function isRunning(pid: number): boolean {
  try {
    process.kill(pid, 0)
    return true
  } catch (error) {
    // It runs, and is somebody else's.
    return (error as NodeJS.ErrnoException).code === 'EPERM'
  }
}

const taken = (holder: Holder | undefined): OutsideError =>
  new OutsideError(
    `Another foldlore prints into this folder${holder ? ` (process ${holder.pid} on ${holder.host})` : ''}`,
    'Wait until it is done, or print into another folder with `-o`',
  )
