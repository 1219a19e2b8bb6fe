import { lstat, realpath } from 'node:fs/promises'
import { basename, dirname, join, relative, sep } from 'node:path'
import process from 'node:process'
import { Refused } from './refused.ts'

/** What a path may name: a lesson or class file, a picture, or a folder. */
export type PlaceKind = 'text' | 'picture' | 'folder'

const endings: Readonly<Record<PlaceKind, RegExp>> = {
  text: /[^/]\.(md|ya?ml)$/i,
  picture: /[^/]$/,
  folder: /^/,
}

/** The longest path that is looked at. */
const longest = 1000

/** Names that Windows takes for devices, whatever their ending. Source: Microsoft, "Naming Files, Paths, and Namespaces". */
const device = /^(con|prn|aux|nul|com\d|lpt\d)(\.|$)/i

/**
 * Where a path of a request leads on the disk: inside the folder, also when all links in it are followed.
 *
 * @param folder the real path of the folder.
 * @param path from there, with `/` between names. The empty path is the folder itself, for the kind `folder`.
 * @returns the real path; of what is not there yet, in the real folder that it is to come into.
 * @throws Refused when it is written otherwise, leads out, or names what the desk leaves alone.
 */
export async function placeIn(folder: string, path: string, kind: PlaceKind): Promise<string> {
  if (path === '' && kind === 'folder') return folder
  if (!isPlain(path) || !endings[kind].test(path)) throw notOurs(path)
  const place = await followed(join(folder, ...path.split('/')), path)
  const inside = relative(folder, place).split(sep).join('/')
  // A link may lead to what could not be asked for by its own name.
  if (inside === '' || (isPlain(inside) && endings[kind].test(inside))) return place
  throw notOurs(path)
}

/** Whether a path consists of ordinary names, goes only down, and means the same on every system. */
function isPlain(path: string): boolean {
  // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
  if (path.length > longest || /[\u0000-\u001f\u007f\\]/.test(path) || /^[a-z]:/i.test(path)) return false
  if (process.platform === 'win32' && path.includes(':')) return false
  return path.split('/').every((name) => name !== '' && !/^\.|[. ]$/.test(name) && !device.test(name))
}

const notOurs = (path: string): Refused =>
  new Refused(403, `The desk does not open \`${shortened(path)}\``, {
    suggestion: 'It opens lessons, class files and pictures in its folder, and nothing that is hidden',
  })

/** A path for a message: without what does not print, and not too long. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is taken out
export const shortened = (path: string): string => path.replace(/[\u0000-\u001f\u007f`]/g, '?').slice(0, 80)

/** The path with all links followed, as far down as there is something. */
async function followed(path: string, told: string): Promise<string> {
  try {
    return await realpath(path)
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException
    if (code !== 'ENOENT') throw notOurs(told)
    // A link that leads nowhere is there, and could lead anywhere by the time that it is written through.
    if (await isThere(path)) throw notOurs(told)
    return join(await followed(dirname(path), told), basename(path))
  }
}

const isThere = (path: string): Promise<boolean> =>
  lstat(path).then(
    () => true,
    () => false,
  )
