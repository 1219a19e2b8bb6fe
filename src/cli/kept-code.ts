import {
  closeSync,
  fstatSync,
  mkdirSync,
  openSync,
  readdirSync,
  readSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs'
import { createRequire } from 'node:module'
import { dirname, join } from 'node:path'
import process from 'node:process'
import { Script } from 'node:vm'
import { crc32 } from 'node:zlib'
import { ownCache } from '../publish/own-cache.ts'

type Need = (name: string) => unknown
/** What such a file is: a function of what a CommonJS module is given. */
type Callable = (
  exports: object,
  need: Need,
  module: { exports: object },
  file: string,
  folder: string,
) => void

/** After so long, in ms, compiled code is thrown away: it may be of a program that was built anew since. */
const longest = 14 * 24 * 3600 * 1000

/** Where compiled code is kept unless said: a folder of this user's, one for each Node. None where Node keeps none itself. */
function usualStore(): string | undefined {
  if (process.env.NODE_DISABLE_COMPILE_CACHE) return undefined
  try {
    return join(ownCache(), `code-${process.version}-${process.arch}`)
  } catch {
    // A user without a home.
    return undefined
  }
}

/**
 * Runs a program that is built of CommonJS files in ASCII, each of them a function, and keeps what Node has compiled of
 * them for the next time: compiling takes longer than what most commands do then. Only parts whose name tells their
 * content are kept. They import nothing while they run: they require it.
 *
 * A folder that cannot be written, or a file in it that is not whole, costs no more than the time it would have saved.
 *
 * @param first the file to begin with; the others lie beside it.
 * @param store folder to keep compiled code in; undefined keeps none.
 */
export function runKept(first: string, store: string | undefined = usualStore()): void {
  const folder = dirname(first)
  const outer = createRequire(first)
  const modules = new Map<string, { exports: object }>()
  const fresh = new Map<string, Script>()

  const load = (name: string): object => {
    const known = modules.get(name)
    if (known) return known.exports
    const module = { exports: {} }
    modules.set(name, module)
    const file = join(folder, name)
    const isKept = store !== undefined && name.startsWith('part-')
    const text = bytesOf(file).toString('latin1')
    const kept = isKept ? keptIn(join(store, name)) : undefined
    const script = new Script(text, {
      filename: file,
      ...(kept && { cachedData: kept }),
    })
    if (isKept && (!kept || script.cachedDataRejected)) fresh.set(name, script)
    const run: Callable = script.runInThisContext()
    run(module.exports, need, module, file, folder)
    return module.exports
  }
  const need: Need = (name) => (name.startsWith('./') ? load(name.slice(2)) : outer(name))

  // At the end, so that what was compiled on the way is kept too.
  if (store !== undefined) process.once('exit', () => keep(fresh, store))
  need(`./${first.slice(folder.length + 1)}`)
}

/** Files are read into the same room, one after the other: to ask for new room takes longer than to read. */
let room = Buffer.alloc(0)

/** A file, up to the next one. */
function bytesOf(file: string): Buffer {
  const open = openSync(file, 'r')
  try {
    const { size } = fstatSync(open)
    if (room.length < size) room = Buffer.allocUnsafeSlow(2 * size)
    return room.subarray(0, readSync(open, room, 0, size, 0))
  } finally {
    closeSync(open)
  }
}

/** How many bytes of a kept file are its checksum, at the end: Node would run what a disk has lost half of. */
const sealLength = 4

/** Compiled code as it was kept; undefined when there is none, or not all of it. */
function keptIn(file: string): Buffer | undefined {
  try {
    const sealed = bytesOf(file)
    const code = sealed.subarray(0, -sealLength)
    return crc32(code) === sealed.readUInt32LE(code.length) ? code : undefined
  } catch {
    return undefined
  }
}

function seal(code: Buffer): Buffer {
  const sealed = Buffer.alloc(code.length + sealLength)
  code.copy(sealed)
  sealed.writeUInt32LE(crc32(code), code.length)
  return sealed
}

/** Keeps compiled code, each file whole or not at all, and throws away what is old. */
function keep(scripts: ReadonlyMap<string, Script>, store: string): void {
  if (scripts.size === 0) return
  try {
    mkdirSync(store, { recursive: true, mode: 0o700 })
    for (const name of readdirSync(store)) {
      const file = join(store, name)
      if (Date.now() - statSync(file).mtimeMs > longest) rmSync(file, { force: true })
    }
    for (const [name, script] of scripts) {
      const draft = join(store, `${name}.${process.pid}`)
      writeFileSync(draft, seal(script.createCachedData()), { mode: 0o600 })
      renameSync(draft, join(store, name))
    }
  } catch {
    // The next start is as slow as this one.
  }
}
