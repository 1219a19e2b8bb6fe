import { readdir } from 'node:fs/promises'
import { join, relative, resolve, sep } from 'node:path'
import { whatFile } from '../../desk/server/what-file.ts'
import { readWhole } from '../../publish/read-file.ts'
import { hashOf } from './hashes.ts'

/** A Markdown file that is a lesson. */
export interface FoundLesson {
  /** From the folder of the library, with `/`. */
  readonly path: string
  readonly place: string
  readonly bytes: Uint8Array
  readonly hash: string
}

/** What was found in a folder. */
export interface FoundLessons {
  readonly lessons: readonly FoundLesson[]
  /** Folders that were looked into. */
  readonly folders: readonly string[]
  /** Markdown files that are no lessons, and files that cannot be read. */
  readonly notes: readonly string[]
}

/** A folder that is nested deeper than this is a mistake, or a circle. */
const deepest = 12

/**
 * Looks for lessons in a folder and below it, in the order of their paths. Hidden folders, linked ones and those of
 * programs are left alone.
 *
 * @param leftOut paths of files and folders that are not looked at.
 * @throws what reading the folder itself throws.
 */
export async function findLessons(folder: string, leftOut: readonly string[]): Promise<FoundLessons> {
  const [lessons, folders, notes]: [FoundLesson[], string[], string[]] = [[], [], []]
  const left = new Set(leftOut.map((path) => resolve(folder, path)))
  const look = async (at: string, depth: number): Promise<void> => {
    const entries = await readdir(at, { withFileTypes: true }).catch((error: unknown) => {
      if (at === folder) throw error
      return []
    })
    folders.push(at)
    for (const entry of entries.sort((a, b) => (a.name < b.name ? -1 : 1))) {
      const place = join(at, entry.name)
      if (left.has(place) || entry.name.startsWith('.') || entry.name === 'node_modules') continue
      if (entry.isDirectory() && depth < deepest) await look(place, depth + 1)
      else if ((entry.isFile() || entry.isSymbolicLink()) && /\.md$/i.test(entry.name)) {
        const path = relative(folder, place).split(sep).join('/')
        const bytes = await readWhole(place).catch(() => undefined)
        const isLesson = bytes && whatFile(path, roughly(bytes))?.kind === 'lesson'
        if (isLesson) lessons.push({ path, place, bytes, hash: hashOf(bytes) })
        else notes.push(path)
      }
    }
  }
  await look(folder, 0)
  return { lessons, folders, notes }
}

/** The text, good enough to see whether it is a lesson: one that is written in another way than UTF-8 is told later. */
function roughly(bytes: Uint8Array): string {
  const mark = `${bytes[0]} ${bytes[1]}`
  const ways: Readonly<Record<string, string>> = { '255 254': 'utf-16le', '254 255': 'utf-16be' }
  return new TextDecoder(ways[mark] ?? 'utf-8').decode(bytes)
}
