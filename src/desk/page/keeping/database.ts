import { type DBSchema, type IDBPDatabase, openDB } from 'idb'
import type { Draft, Earlier } from './drafts.ts'

/** What this browser keeps for the desk. */
export interface Keeps extends DBSchema {
  drafts: { key: string; value: Draft }
  earlier: { key: number; value: Omit<Earlier, 'id'> & { id?: number }; indexes: { lesson: string } }
  /** Folders that the teacher has let the page into. */
  folders: { key: string; value: { id: string; handle: FolderHandle; used: number } }
  /** Lessons that were opened or saved as single files. */
  files: { key: string; value: { path: string; text: string; changed: number } }
  /** Pictures of lessons that are in no folder. */
  pictures: { key: [string, string]; value: { lesson: string; name: string; data: Blob } }
}

/** A `FileSystemDirectoryHandle`, which only pages know. */
export interface FolderHandle {
  readonly kind: 'directory'
  readonly name: string
}

export type Database = IDBPDatabase<Keeps>

/** Opens the database. Fails where the browser keeps nothing: in some private windows, or when it is forbidden. */
export function openDatabase(name = 'foldlore desk'): Promise<Database> {
  const opening: Promise<Database> = openDB<Keeps>(name, 1, {
    upgrade(database) {
      database.createObjectStore('drafts', { keyPath: 'lesson' })
      database
        .createObjectStore('earlier', { keyPath: 'id', autoIncrement: true })
        .createIndex('lesson', 'lesson')
      database.createObjectStore('folders', { keyPath: 'id' })
      database.createObjectStore('files', { keyPath: 'path' })
      database.createObjectStore('pictures', { keyPath: ['lesson', 'name'] })
    },
    blocking() {
      // A newer page in another tab waits for this one.
      void opening.then((database) => database.close())
    },
  })
  return opening
}
