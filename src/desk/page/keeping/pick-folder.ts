import type { Database } from './database.ts'
import { folderStore } from './folder-store.ts'
import type { Store } from './store.ts'

/** The parts of the File System Access API that a browser may lack. */
interface Picking {
  showDirectoryPicker?(options: { id: string; mode: 'readwrite' }): Promise<FileSystemDirectoryHandle>
}
type Asking = FileSystemDirectoryHandle & {
  queryPermission?(options: { mode: 'readwrite' }): Promise<PermissionState>
  requestPermission?(options: { mode: 'readwrite' }): Promise<PermissionState>
}

/** Whether this browser can let a page into a folder. */
export const canPickFolder = (): boolean => 'showDirectoryPicker' in globalThis

/**
 * Asks the teacher for a folder, and remembers it. To be called from a click.
 *
 * @returns undefined when the teacher chose none.
 */
export async function pickFolder(database: Database | undefined): Promise<Store | undefined> {
  let folder: FileSystemDirectoryHandle | undefined
  try {
    folder = await (globalThis as Picking).showDirectoryPicker?.({ id: 'lessons', mode: 'readwrite' })
  } catch {
    return undefined
  }
  return folder && rememberFolder(database, folder)
}

/** A folder that was known before keeps its identity, and with it its drafts. */
export async function rememberFolder(
  database: Database | undefined,
  folder: FileSystemDirectoryHandle,
): Promise<Store> {
  const before = (await database?.getAll('folders').catch(() => undefined)) ?? []
  let id: string | undefined
  for (const one of before)
    if (await folder.isSameEntry(one.handle as FileSystemDirectoryHandle).catch(() => false)) id = one.id
  id ??= crypto.randomUUID()
  await database?.put('folders', { id, handle: folder, used: Date.now() }).catch(() => {})
  return folderStore(folder, id)
}

/** The folder that was used last, and how to get into it. */
export interface LastFolder {
  readonly name: string
  /** Whether the browser lets the page in without asking. */
  readonly open: boolean
  /** Asks for it if it must. To be called from a click unless `open`; undefined when it is not allowed. */
  enter(): Promise<Store | undefined>
}

export async function lastFolder(database: Database | undefined): Promise<LastFolder | undefined> {
  const all = (await database?.getAll('folders').catch(() => undefined)) ?? []
  const [last] = all.sort((a, b) => b.used - a.used)
  if (!last) return undefined
  const handle = last.handle as Asking
  const may = await handle.queryPermission?.({ mode: 'readwrite' })
  return {
    name: handle.name,
    open: may === 'granted' || may === undefined,
    async enter() {
      const now = await handle.requestPermission?.({ mode: 'readwrite' }).catch(() => 'denied')
      return now === 'granted' || now === undefined ? rememberFolder(database, handle) : undefined
    },
  }
}
