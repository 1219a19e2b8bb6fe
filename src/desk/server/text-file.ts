import { createHash } from 'node:crypto'
import { stat } from 'node:fs/promises'
import type { SavingDisk } from './disk.ts'
import type { inTurn } from './in-turn.ts'
import { placeIn, shortened } from './place.ts'
import { Refused } from './refused.ts'
import { saveWhole } from './save-whole.ts'

/** The most bytes that a lesson or a class file may have. */
export const mostText = 2_000_000

/** A text as it lies in the folder. */
export interface TextFile {
  readonly text: string
  /** SHA-256 of its bytes. */
  readonly version: string
}

/** What files are read and saved with. */
export interface Keeping {
  /** Real path of the folder. */
  readonly folder: string
  readonly disk: SavingDisk
  readonly turns: ReturnType<typeof inTurn>
}

/** What came of saving: the new version, or what the file holds instead of what was meant to be replaced. */
export type SavedText = { readonly version: string } | { readonly other: TextFile }

export const versionOf = (bytes: Uint8Array): string => createHash('sha256').update(bytes).digest('hex')

/**
 * Reads a lesson or a class file. Its text is all of its bytes: a byte order mark is its first character, and lines end
 * as they end there, so that saving the same text gives the same bytes.
 *
 * @throws Refused when it is not there or no text.
 */
export async function readTextFile(path: string, { folder, disk }: Keeping): Promise<TextFile> {
  const found = await fileAt(await placeIn(folder, path, 'text'), path, disk)
  if (found) return found
  throw new Refused(404, `There is no \`${shortened(path)}\` in the folder`, {
    suggestion: 'It may have been moved or renamed: look in the folder',
  })
}

async function fileAt(place: string, path: string, disk: SavingDisk): Promise<TextFile | undefined> {
  const about = await stat(place).catch(() => undefined)
  if (!about) return undefined
  const told = shortened(path)
  if (!about.isFile()) throw new Refused(403, `\`${told}\` is no file`)
  if (about.size > mostText) throw new Refused(413, `\`${told}\` has more than 2 MB, too much for a lesson`)
  const bytes = await disk.read(place).catch((error: NodeJS.ErrnoException) => {
    if (error.code === 'ENOENT') return undefined
    throw new Refused(403, `\`${told}\` cannot be read`, { suggestion: 'Ask for the right to read it' })
  })
  return bytes && { text: textOf(bytes, told), version: versionOf(bytes) }
}

function textOf(bytes: Uint8Array, told: string): string {
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes)
  } catch {
    throw new Refused(422, `\`${told}\` is not UTF-8 text`, { suggestion: 'Save it as UTF-8 in your editor' })
  }
}

/**
 * Saves a lesson or a class file whole or not at all, and only over what was read.
 *
 * @param over version of the file that is to be replaced; undefined for a new one. A file that is gone meanwhile is made
 * again, and one that holds the same text already is left as it is.
 * @throws Refused, or OutsideError when the disk refuses.
 */
export async function saveTextFile(
  path: string,
  text: string,
  over: string | undefined,
  keeping: Keeping,
): Promise<SavedText> {
  const { folder, disk, turns } = keeping
  const bytes = Buffer.from(text, 'utf8')
  if (bytes.length > mostText) throw new Refused(413, 'That is more than 2 MB, too much for a lesson')
  const version = versionOf(bytes)
  const place = await placeIn(folder, path, 'text')
  await stat(folder).catch(() => {
    throw new Refused(503, 'The folder is not there any more', {
      suggestion: 'Bring it back, then save again',
    })
  })
  return turns(place, async () => {
    const now = await fileAt(place, path, disk)
    if (now?.version === version) return { version }
    if (now && now.version !== over) return { other: now }
    if (now && (((await disk.mode(place)) ?? 0o200) & 0o222) === 0)
      throw new Refused(403, `\`${shortened(path)}\` may only be read`, {
        suggestion: 'Allow writing to it in its properties, or save under another name',
      })
    let other: TextFile | undefined
    // Writing takes a while: another program may have saved meanwhile.
    const unchanged = async (): Promise<boolean> => {
      other = await fileAt(place, path, disk)
      return other?.version === now?.version
    }
    if (await saveWhole(place, bytes, now !== undefined, disk, unchanged)) return { version }
    other ??= await fileAt(place, path, disk)
    if (other) return { other }
    throw new Refused(503, 'Another program is changing this file right now', { suggestion: 'Save again' })
  })
}
