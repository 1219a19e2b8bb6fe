import { readdir } from 'node:fs/promises'
import { join, relative, resolve, sep } from 'node:path'
import { whatFile } from '../../desk/server/what-file.ts'
import { OutsideError } from '../../publish/problems.ts'
import { readWhole } from '../../publish/read-file.ts'
import { hashOf } from './hashes.ts'
import { isPassedOver, unread } from './unread.ts'

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
  /** Files and folders that could not be looked at, each by its path, and why. */
  readonly missed: readonly { readonly path: string; readonly error: OutsideError }[]
}

/** A folder that is nested deeper than this is a mistake. */
const deepest = 40
/** As for every text file: what is larger is none. In bytes. */
const mostText = 20_000_000

/**
 * Looks for lessons in a folder and below it, in the order of their paths. Hidden folders, linked ones and those of
 * programs are left alone.
 *
 * @param leftOut paths of files and folders that are not looked at.
 * @throws OutsideError when the folder itself cannot be read.
 */
export async function findLessons(folder: string, leftOut: readonly string[]): Promise<FoundLessons> {
  const [lessons, folders]: [FoundLesson[], string[]] = [[], []]
  const missed: FoundLessons['missed'][number][] = []
  const pathOf = (place: string): string => relative(folder, place).split(sep).join('/')
  const miss = (place: string, error: OutsideError): void => void missed.push({ path: pathOf(place), error })
  const left = new Set(leftOut.map((path) => resolve(folder, path)))
  const look = async (at: string, depth: number): Promise<void> => {
    const entries = await readdir(at, { withFileTypes: true }).catch((error: unknown) => {
      if (at === folder) throw unread(error, `Cannot read \`${folder}\``)
      if (!isPassedOver(error)) miss(at, unread(error, 'Cannot look into a folder'))
      return []
    })
    folders.push(at)
    for (const entry of entries.sort((a, b) => (a.name < b.name ? -1 : 1))) {
      const place = join(at, entry.name)
      if (left.has(place) || entry.name.startsWith('.') || entry.name === 'node_modules') continue
      if (entry.isDirectory()) {
        if (depth < deepest) await look(place, depth + 1)
        else miss(place, tooDeep())
      } else if ((entry.isFile() || entry.isSymbolicLink()) && /\.md$/i.test(entry.name)) {
        const path = pathOf(place)
        const bytes = await readWhole(place, mostText).catch((error: unknown) => {
          if (!isPassedOver(error)) miss(place, unread(error, 'Cannot read a file'))
        })
        if (bytes && whatFile(path, roughly(bytes))?.kind === 'lesson')
          lessons.push({ path, place, bytes, hash: hashOf(bytes) })
      }
    }
  }
  await look(folder, 0)
  return { lessons, folders, missed }
}

const tooDeep = (): OutsideError =>
  new OutsideError(
    `Folders more than ${deepest} deep are not looked into`,
    'Move their lessons further up, or name the folder behind `leave out` in `library.yaml`',
  )

/** The text, good enough to see whether it is a lesson: one that is written in another way than UTF-8 is told later. */
function roughly(bytes: Uint8Array): string {
  const mark = `${bytes[0]} ${bytes[1]}`
  const ways: Readonly<Record<string, string>> = { '255 254': 'utf-16le', '254 255': 'utf-16be' }
  return new TextDecoder(ways[mark] ?? 'utf-8').decode(bytes)
}
