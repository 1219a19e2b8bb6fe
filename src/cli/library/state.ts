import { readFile } from 'node:fs/promises'
import { join } from 'node:path'
import { disk } from '../../publish/outside.ts'
import { writeWhole } from '../../publish/write.ts'
import type { LessonRecord, Records } from './records.ts'

/** Where a library notes what it has made. */
export const stateName = '.foldlore-library.json'

/** Goes up when the notes of an earlier program can no longer be read. */
const version = 1

/** What a library has made, and of what. */
export interface State {
  readonly lessons: Records
  /** What each page that leads to prints was made of, by its name. */
  readonly pages: Readonly<Record<string, string>>
}

const nothing: State = { lessons: new Map(), pages: {} }

/** Reads the notes. Where there are none, or none that can be read, nothing is known, and all is made again. */
export async function readState(out: string): Promise<State> {
  try {
    const read = JSON.parse(await readFile(join(out, stateName), 'utf8'))
    if (read.version !== version) return nothing
    return {
      lessons: new Map(Object.entries(read.lessons as Record<string, LessonRecord>)),
      pages: read.pages,
    }
  } catch {
    return nothing
  }
}

/** Writes the notes whole. Throws OutsideError. */
export async function writeState(out: string, { lessons, pages }: State): Promise<void> {
  const text = JSON.stringify({ version, pages, lessons: Object.fromEntries(lessons) })
  await writeWhole([{ path: join(out, stateName), data: new TextEncoder().encode(text) }], disk)
}
