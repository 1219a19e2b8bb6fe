import { createHash } from 'node:crypto'
import { readdir, readFile } from 'node:fs/promises'
import { join } from 'node:path'
import { readWhole } from '../../publish/read-file.ts'
import { mostBytes } from '../../publish/theme-limits.ts'
import { inTurns } from './in-turns.ts'

/** A short name for a content: two contents with the same name do not happen. */
export function hashOf(...parts: readonly (string | Uint8Array)[]): string {
  const hash = createHash('sha256')
  for (const part of parts) {
    const bytes = typeof part === 'string' ? Buffer.from(part) : part
    // With its length, so that two parts are never taken for two others.
    hash.update(`${bytes.length}:`).update(bytes)
  }
  return hash.digest('base64url').slice(0, 22)
}

/** The hash of a file; null where none can be read. */
export const hashOfFile = (path: string): Promise<string | null> =>
  readFile(path).then(
    (bytes) => hashOf(bytes),
    () => null,
  )

/**
 * The hash of all that lies in a folder and below it.
 *
 * @param of the content of a file; unless said, its bytes.
 */
export async function hashOfFolder(
  folder: string,
  of: (path: string) => Promise<string | Uint8Array | undefined> = (path) => readFile(path),
): Promise<string> {
  const entries = await readdir(folder, { withFileTypes: true, recursive: true }).catch(() => [])
  const paths = entries
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath ?? entry.path, entry.name))
    .sort()
  return hashOfFiles(folder, paths, of)
}

/** The hash of what a theme in a folder is made of; whatever else lies there does not count. */
export async function hashOfTheme(folder: string): Promise<string> {
  const names = async (at: string): Promise<string[]> =>
    (await readdir(join(folder, at)).catch(() => [])).map((name) => join(at, name))
  const own = (await names('')).filter((name) => /\.(hbs|css)$|^theme\.yaml$/.test(name))
  const partials = (await names('partials')).filter((name) => name.endsWith('.hbs'))
  const paths = [...own, ...partials].sort().map((name) => join(folder, name))
  return hashOfFiles(folder, paths, (path) => readWhole(path, mostBytes(path)))
}

async function hashOfFiles(
  folder: string,
  paths: readonly string[],
  of: (path: string) => Promise<string | Uint8Array | undefined>,
): Promise<string> {
  const parts = await inTurns(paths, async (path) => [
    path.slice(folder.length),
    (await of(path).catch(() => undefined)) ?? '',
  ])
  return hashOf(...parts.flat())
}
