import { randomUUID } from 'node:crypto'
import { createReadStream, createWriteStream } from 'node:fs'
import { mkdir, readFile, rename, rm, stat } from 'node:fs/promises'
import { createRequire } from 'node:module'
import { dirname, join } from 'node:path'
import process from 'node:process'
import { pipeline } from 'node:stream/promises'
import { createBrotliDecompress } from 'node:zlib'
import { ownCache } from './own-cache.ts'
import { plainError } from './write.ts'

const name = '@sparticuz/chromium'

/**
 * The browser of the optional package, for computers without one.
 *
 * The package's own way would put it under a name that everybody on the computer knows, where a second program that
 * starts meanwhile takes a half-written one; so it is unpacked here, into a folder of this user's, whole or not at all.
 * Nothing else of the package is used: the switches it suggests turn the browser's security off.
 *
 * @returns its path, or undefined when the package is not installed or is not for this kind of computer.
 */
export async function packagedBrowser(): Promise<string | undefined> {
  if (process.platform !== 'linux' || process.arch !== 'x64') return undefined
  let packed: string
  let version: string
  try {
    const root = rootOf(createRequire(import.meta.url).resolve(name))
    packed = join(root, 'bin', 'chromium.br')
    version = JSON.parse(await readFile(join(root, 'package.json'), 'utf8')).version
    await stat(packed)
  } catch {
    return undefined
  }
  const path = join(ownCache(), `chromium-${version}`)
  const there = await stat(path).catch(() => undefined)
  if (!there) await unpack(packed, path)
  return path
}

async function unpack(packed: string, path: string): Promise<void> {
  const draft = `${path}.${randomUUID()}.part`
  try {
    await mkdir(dirname(path), { recursive: true, mode: 0o700 })
    await pipeline(
      createReadStream(packed),
      createBrotliDecompress(),
      createWriteStream(draft, { mode: 0o700 }),
    )
    await rename(draft, path)
  } catch (error) {
    await rm(draft, { force: true }).catch(() => {})
    throw plainError(error, `Cannot unpack the browser to \`${path}\``)
  }
}

/** `…/node_modules/@sparticuz/chromium` of a file somewhere in it. */
function rootOf(file: string): string {
  const mark = join('node_modules', ...name.split('/'))
  return file.slice(0, file.lastIndexOf(mark) + mark.length)
}
