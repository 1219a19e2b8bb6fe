import { saveFile } from '../parts/save-file.ts'
import { plainText } from './as-written.ts'
import type { Database } from './database.ts'
import { dataAddress } from './desk-server.ts'
import { keepPicture, picturesOf } from './picture-shelf.ts'
import { type Kept, type Store, StoreTrouble } from './store.ts'
import { versionOf } from './version.ts'

/** No folder: lessons are opened as single files and saved as downloads; this browser remembers both. */
export interface DownloadsStore extends Store {
  /** Takes in a file that the teacher has chosen, and gives its path for `Keeper.open`. */
  take(file: File): Promise<string>
}

interface Remembered {
  readonly path: string
  readonly text: string
  readonly changed: number
}

/** @param database remembers what was opened and saved; without it, only as long as the page is open. */
export function downloadsStore(database: Database | undefined): DownloadsStore {
  const files = new Map<string, Remembered>()
  const get = async (path: string): Promise<Remembered | undefined> =>
    files.get(path) ?? (await database?.get('files', path).catch(() => undefined))
  const remember = async (file: Remembered): Promise<void> => {
    files.set(file.path, file)
    await database?.put('files', file).catch(() => {})
  }
  const kept = async ({ path, text }: Remembered): Promise<Kept> => ({
    path,
    text,
    version: await versionOf(text),
  })
  return {
    kind: 'downloads',
    name: 'this browser',
    id: 'downloads',
    async list() {
      const all = (await database?.getAll('files').catch(() => undefined)) ?? [...files.values()]
      return all
        .map(({ path, changed }) => ({
          path,
          title: path.replace(/\.md$/i, ''),
          kind: 'lesson' as const,
          changed,
        }))
        .sort((a, b) => b.changed - a.changed)
    },
    async read(path) {
      const file = await get(path)
      if (!file)
        throw new StoreTrouble('missing', 'it was not opened in this browser before. Open the file itself')
      return kept(file)
    },
    async save(path, text, over) {
      const there = await get(path)
      if (there && (await versionOf(there.text)) !== over) return { other: await kept(there) }
      saveFile(path, new Blob([text], { type: 'text/markdown' }))
      for (const picture of await picturesOf(database, path)) saveFile(picture.name, picture.data)
      await remember({ path, text, changed: Date.now() })
      return { version: await versionOf(text) }
    },
    async picture(lesson, address) {
      const found = await database?.get('pictures', [lesson, decodeURI(address)]).catch(() => undefined)
      return found && dataAddress(found.data)
    },
    addPicture: (lesson, wanted, data) => keepPicture(database, lesson, wanted, data),
    watch: () => () => {},
    async take(file) {
      const text = plainText(await file.text())
      await remember({ path: file.name, text, changed: Date.now() })
      return file.name
    },
  }
}
