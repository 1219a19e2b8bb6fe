import type { Dirent, Stats } from 'node:fs'
import { readdir, stat } from 'node:fs/promises'
import { join } from 'node:path'
import { placeIn } from './place.ts'

/** A lesson, class file or picture that may be, as it lies in the folder. */
export interface FoundFile {
  /** From the folder, with `/`. */
  readonly path: string
  readonly place: string
  readonly stats: Stats
}

/** How far the desk looks. */
export const reach = { depth: 6, folders: 500, files: 2000 } as const

/** Folders of programs, not of lessons. */
const left = new Set(['node_modules'])

/** What is in a folder and in those below. */
export interface Found {
  readonly files: readonly FoundFile[]
  /** Places of the folders that were looked into. */
  readonly folders: readonly string[]
  /** Places of files that a save left behind when it was cut off. */
  readonly drafts: readonly string[]
  /** Whether there is more than the desk looks at. */
  readonly more: boolean
}

/**
 * Looks for texts in a folder and those below, the upper ones first. Hidden folders and linked ones are left alone. What
 * cannot be read is not there.
 *
 * @param folder its real path.
 */
export async function findTexts(folder: string, isDraft: (name: string) => boolean): Promise<Found> {
  const files: FoundFile[] = []
  const folders: string[] = []
  const drafts: string[] = []
  let more = false
  let level = ['']
  for (let depth = 0; depth <= reach.depth && level.length > 0; depth++) {
    const next: string[] = []
    for (const path of level) {
      if (folders.length >= reach.folders || files.length >= reach.files)
        return { files, folders, drafts, more: true }
      const place = join(folder, path)
      const entries = await readdir(place, { withFileTypes: true }).catch(() => [])
      folders.push(place)
      for (const entry of entries.sort((a, b) => (a.name < b.name ? -1 : 1))) {
        const at = path === '' ? entry.name : `${path}/${entry.name}`
        if (entry.isFile() && isDraft(entry.name)) drafts.push(join(place, entry.name))
        else if (entry.isDirectory() && !entry.name.startsWith('.') && !left.has(entry.name)) next.push(at)
        else if (isText(entry)) {
          const found = await fileAt(folder, at)
          if (found && files.length < reach.files) files.push(found)
          else if (found) more = true
        }
      }
    }
    level = next
  }
  return { files, folders, drafts, more: more || level.length > 0 }
}

const isText = (entry: Dirent): boolean =>
  (entry.isFile() || entry.isSymbolicLink()) && /\.(md|ya?ml)$/i.test(entry.name)

async function fileAt(folder: string, path: string): Promise<FoundFile | undefined> {
  try {
    const place = await placeIn(folder, path, 'text')
    const stats = await stat(place)
    return stats.isFile() ? { path, place, stats } : undefined
  } catch {
    return undefined
  }
}
