import { dirname } from 'node:path'
import type { Outside } from '../../src/cli/outside.ts'
import { run } from '../../src/cli/run.ts'

type Files = Readonly<Record<string, string | Uint8Array>>

/** A mistake as `node:fs` makes it. */
export const failure = (code: string) => Object.assign(new Error(code), { code })

/** A disk and a terminal that are only remembered. */
export function memory(files: Files = {}, env: Readonly<Record<string, string>> = {}) {
  const disk = new Map<string, Uint8Array>(
    Object.entries(files).map(([path, c]) => [path, typeof c === 'string' ? new TextEncoder().encode(c) : c]),
  )
  let out = ''
  let err = ''
  const take = (path: string): Uint8Array => {
    const content = disk.get(path)
    if (content === undefined) throw failure('ENOENT')
    return content
  }
  const outside: Outside = {
    env,
    read: async (path) => take(path),
    async create(path, data) {
      if (disk.has(path)) throw failure('EEXIST')
      disk.set(path, data)
    },
    async rename(from, to) {
      disk.set(to, take(from))
      disk.delete(from)
    },
    async remove(path) {
      disk.delete(path)
    },
    async makeFolder() {},
    isFolder: async (path) => [...disk.keys()].some((p) => dirname(p) === path),
    stdout(text) {
      out += text
    },
    stderr(text) {
      err += text
    },
    openAddress: async () => false,
    stopped: async () => {},
  }
  return {
    outside,
    disk,
    text: (path: string) => new TextDecoder('utf-8', { ignoreBOM: true }).decode(disk.get(path)),
    out: () => out,
    err: () => err,
  }
}

/** Runs one command line there; gives the exit code. */
export const foldloreIn = ({ outside }: ReturnType<typeof memory>, argv: readonly string[]) =>
  run(argv, outside)

/** Runs one command line on a disk with these files. */
export async function foldlore(argv: readonly string[], files: Files = {}) {
  const world = memory(files)
  const code = await foldloreIn(world, argv)
  return { code, out: world.out(), err: world.err(), disk: world.disk, text: world.text }
}
