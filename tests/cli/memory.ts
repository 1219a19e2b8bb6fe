import { dirname } from 'node:path'
import type { Outside } from '../../src/cli/outside.ts'
import { OutsideError } from '../../src/cli/problems.ts'
import { run } from '../../src/cli/run.ts'

/** A disk and a terminal that are only remembered. */
export function memory(files: Readonly<Record<string, string | Uint8Array>> = {}) {
  const disk = new Map(Object.entries(files))
  let out = ''
  let err = ''
  const outside: Outside = {
    env: {},
    async read(path) {
      const content = disk.get(path)
      if (content === undefined) throw new OutsideError(`Cannot read \`${path}\`: there is no such file`)
      return typeof content === 'string' ? new TextEncoder().encode(content) : content
    },
    async write(path, content) {
      disk.set(path, content)
    },
    async exists(path) {
      if (disk.has(path)) return 'file'
      return [...disk.keys()].some((p) => dirname(p) === path) ? 'folder' : undefined
    },
    stdout(text) {
      out += text
    },
    stderr(text) {
      err += text
    },
  }
  return {
    outside,
    disk,
    text: (path: string) => String(disk.get(path)),
    out: () => out,
    err: () => err,
  }
}

/** Runs one command line on a remembered disk. */
export async function foldlore(
  argv: readonly string[],
  files: Readonly<Record<string, string | Uint8Array>> = {},
) {
  const world = memory(files)
  const code = await run(argv, world.outside)
  return { code, out: world.out(), err: world.err(), disk: world.disk, text: world.text }
}
