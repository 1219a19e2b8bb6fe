import { readFile, stat } from 'node:fs/promises'
import { join, posix } from 'node:path'
import { pictureKind } from '../../publish/picture-kind.ts'
import { placeIn, shortened } from './place.ts'
import { Refused } from './refused.ts'
import { saveWhole } from './save-whole.ts'
import type { Keeping } from './text-file.ts'

/** The most bytes that a picture may have: what a print can carry. */
export const mostPicture = 10_000_000

/** A picture and its kind by its first bytes, as a media type. */
export interface Picture {
  readonly bytes: Uint8Array
  readonly type: string
}

/** The folder of a lesson as a path from the folder of the desk; a lesson that is in none yet is in that one. */
const folderOf = (lesson: string): string => (lesson.includes('/') ? posix.dirname(lesson) : '')

/**
 * Reads a picture of a lesson, from the lesson's own folder and below, as printing does.
 *
 * @param address as it stands in the lesson.
 * @throws Refused when there is none, or it is no picture.
 */
export async function readPicture(lesson: string, address: string, folder: string): Promise<Picture> {
  const path = decoded(address)
  const own = folderOf(lesson)
  return pictureAt(own === '' ? path : `${own}/${path}`, folder, path)
}

/**
 * Reads a picture by its path from the folder of the desk.
 *
 * @param told how it is named in messages.
 * @throws Refused when there is none, or it is no picture.
 */
export async function pictureAt(at: string, folder: string, told = at): Promise<Picture> {
  const place = await placeIn(folder, at, 'picture')
  const about = await stat(place).catch(() => undefined)
  if (!about?.isFile()) throw new Refused(404, `There is no picture \`${shortened(told)}\``)
  return checkPicture(about.size > mostPicture ? undefined : await readFile(place), told)
}

/** Throws Refused when it is none. */
function checkPicture(bytes: Uint8Array | undefined, told: string): Picture {
  if (!bytes) throw new Refused(413, `\`${shortened(told)}\` has more than 10 MB, too much for a page`)
  const type = pictureKind(bytes)
  if (type) return { bytes, type }
  throw new Refused(415, `\`${shortened(told)}\` is no picture that can be printed`, {
    suggestion: 'Save it as PNG, JPEG, WebP, GIF or SVG',
  })
}

/** An address in a lesson as a path: without what stands behind `?` or `#`, and without percent signs. */
function decoded(address: string): string {
  const path = address.replace(/[?#].*$/s, '').replace(/^(\.\/)+/, '')
  try {
    return decodeURIComponent(path)
  } catch {
    return path
  }
}

const endings: Readonly<Record<string, string>> = {
  'image/png': 'png',
  'image/jpeg': 'jpg',
  'image/gif': 'gif',
  'image/webp': 'webp',
  'image/svg+xml': 'svg',
}

/** So many names are tried before a teacher is asked for another one. */
const mostNames = 1000

/**
 * Puts a picture beside a lesson under a name like the given one that is free, or under which that very picture lies
 * already. Nothing is overwritten.
 *
 * @returns the address to write into the lesson.
 * @throws Refused when it is no picture; OutsideError when the disk refuses.
 */
export async function addPicture(
  lesson: string,
  name: string,
  bytes: Uint8Array,
  { folder, disk }: Pick<Keeping, 'folder' | 'disk'>,
): Promise<string> {
  const { type } = checkPicture(bytes, name)
  const own = await placeIn(folder, folderOf(lesson), 'folder')
  for (let i = 1; i <= mostNames; i++) {
    const address = `${plainName(name)}${i > 1 ? `-${i}` : ''}.${endings[type]}`
    const place = join(own, address)
    // What lies there is only compared, so a link that leads out tells nothing.
    const there = await readFile(place).catch((error: NodeJS.ErrnoException) => error.code === 'ENOENT')
    if (there === true && (await saveWhole(place, bytes, false, disk))) return address
    if (typeof there === 'object' && there.equals(bytes)) return address
  }
  throw new Refused(409, `Many pictures are called \`${shortened(name)}\``, {
    suggestion: 'Give it another name',
  })
}

/** A name without ending that is one on every system, and needs no signs in Markdown: `Der Hafen.JPG` gives `der-hafen`. */
function plainName(name: string): string {
  const plain = name
    .normalize('NFC')
    .toLowerCase()
    .replace(/^.*[/\\]/s, '')
    .replace(/\.[a-z\d]{1,5}$/, '')
    .replaceAll(/[^\p{L}\p{M}\p{N}]+/gu, '-')
    .replaceAll(/^-+|-+$/g, '')
    .slice(0, 60)
  return plain === '' || /^(con|prn|aux|nul|com\d|lpt\d)$/.test(plain)
    ? `picture${plain && '-'}${plain}`
    : plain
}
