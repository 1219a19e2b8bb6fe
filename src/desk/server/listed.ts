import { readFile } from 'node:fs/promises'
import { type FoundFile, findTexts } from './list-files.ts'
import { isDraft } from './save-whole.ts'
import { mostText } from './text-file.ts'
import { type WhatFile, whatFile } from './what-file.ts'

/** A file that can be opened. */
export interface ListedFile extends WhatFile {
  readonly path: string
  /** Milliseconds since 1970. */
  readonly changed: number
}

/** Lists the lessons and class files of a folder. It reads again only what has changed since it was asked last. */
export function lister(folder: string): () => Promise<{ files: readonly ListedFile[]; more: boolean }> {
  let known = new Map<string, { readonly stamp: string; readonly what: WhatFile | undefined }>()
  return async () => {
    const { files, more } = await findTexts(folder, isDraft)
    const now: typeof known = new Map()
    const listed: ListedFile[] = []
    for (const file of files) {
      const stamp = stampOf(file)
      const before = known.get(file.path)
      const what = before?.stamp === stamp ? before.what : await read(file)
      now.set(file.path, { stamp, what })
      if (what) listed.push({ path: file.path, ...what, changed: Math.round(file.stats.mtimeMs) })
    }
    known = now
    return { files: listed, more }
  }
}

/** Changes whenever a file does. */
export const stampOf = ({ stats }: FoundFile): string =>
  `${stats.ino} ${stats.size} ${stats.mtimeMs} ${stats.ctimeMs}`

async function read({ path, place, stats }: FoundFile): Promise<WhatFile | undefined> {
  if (stats.size > mostText) return undefined
  const text = await readFile(place, 'utf8').catch(() => '')
  return whatFile(path, text)
}
