import { chmod, link, open, rename, rm, stat } from 'node:fs/promises'
import process from 'node:process'
import { type Outside, disk as publishDisk } from '../../publish/outside.ts'

/** The disk, as far as saving needs it. Each call fails as `node:fs` does, with a `code`. */
export interface SavingDisk extends Outside {
  /** Gives a file a second name; fails with `EEXIST` when something has that name. */
  link(from: string, to: string): Promise<void>
  /** The rights of a file; undefined when there is none. */
  mode(path: string): Promise<number | undefined>
  setMode(path: string, mode: number): Promise<void>
  /** Comes back once the names in a folder lie on the disk. */
  settle(folder: string): Promise<void>
}

/** The disk of this computer. */
export const savingDisk: SavingDisk = {
  ...publishDisk,
  link,
  rename,
  remove: (path) => rm(path, { force: true }),
  mode: (path) =>
    stat(path).then(
      ({ mode }) => mode & 0o7777,
      () => undefined,
    ),
  setMode: chmod,
  async settle(folder) {
    // Windows does not open folders, and keeps names in its journal.
    if (process.platform === 'win32') return
    const opened = await open(folder, 'r')
    try {
      await opened.sync()
    } finally {
      await opened.close()
    }
  },
}
