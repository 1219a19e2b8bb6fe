import { randomUUID } from 'node:crypto'
import { mkdir, readFile, rename, rm, stat, writeFile } from 'node:fs/promises'
import { dirname, resolve } from 'node:path'
import process from 'node:process'
import type { Outside } from './outside.ts'
import { OutsideError } from './problems.ts'

/** The real outside: this machine's disk and terminal. Paths start from `folder`. */
export const diskAt = (folder: string): Outside => ({
  env: process.env,
  read: (path) => readFile(resolve(folder, path)).catch((error) => fail('read', path, error)),
  async write(path, content) {
    const target = resolve(folder, path)
    // Written beside its place and then renamed: whoever looks finds the old file or the whole new one.
    const draft = `${target}.${randomUUID()}.part`
    try {
      await mkdir(dirname(target), { recursive: true })
      await writeFile(draft, content, { flag: 'wx' })
      await rename(draft, target)
    } catch (error) {
      await rm(draft, { force: true }).catch(() => {})
      fail('write', path, error)
    }
  },
  async exists(path) {
    const found = await stat(resolve(folder, path)).catch((error) => {
      if (error.code === 'ENOENT' || error.code === 'ENOTDIR') return undefined
      return fail('look at', path, error)
    })
    return found && (found.isDirectory() ? 'folder' : 'file')
  },
  stdout: (text) => void process.stdout.write(text),
  stderr: (text) => void process.stderr.write(text),
})

const reasons: Readonly<Record<string, readonly [why: string, cure: string]>> = {
  ENOENT: ['there is no such file', 'Check the path and the name'],
  ENOTDIR: ['part of the path is a file, not a folder', 'Check the path'],
  EEXIST: ['part of the path is a file, not a folder', 'Check the path'],
  EISDIR: ['it is a folder', 'Name a file in it'],
  EACCES: ['it is not allowed', 'Ask for the right to it, or name another place'],
  EPERM: ['it is not allowed', 'Ask for the right to it, or name another place'],
  EROFS: ['the disk can only be read', 'Name another place with `-o`'],
  ENOSPC: ['the disk is full', 'Make room and try again'],
  EDQUOT: ['the disk is full', 'Make room and try again'],
  ENAMETOOLONG: ['the name is too long', 'Choose a shorter one'],
}

function fail(what: string, path: string, error: unknown): never {
  const code = (error as { code?: string }).code ?? ''
  const [why, cure] = reasons[code] ?? [`the system says ${code || String(error)}`, undefined]
  throw new OutsideError(`Cannot ${what} \`${path}\`: ${why}`, cure)
}
