import { mkdir, open, rename, rm, stat } from 'node:fs/promises'
import { dirname } from 'node:path'
import { readWhole } from './read-file.ts'

/** The disk, as far as publishing needs it. Each call fails as `node:fs` does, with a `code`. */
export interface Outside {
  /** The whole file; one that has more than `most` bytes may be refused with the code `EFBIG` before it is read. */
  read(path: string, most?: number): Promise<Uint8Array>
  /** Writes a file that is not there yet, and returns once it lies on the disk. */
  create(path: string, data: Uint8Array): Promise<void>
  /** Moves a file, in place of another if there is one. */
  rename(from: string, to: string): Promise<void>
  /** Takes a file away; no error when there is none. */
  remove(path: string): Promise<void>
  /** Makes a folder and those above it; no error when they are there. */
  makeFolder(path: string): Promise<void>
}

/** The disk of this computer. */
export const disk: Outside = {
  read: readWhole,
  async create(path, data) {
    const file = await open(path, 'wx')
    try {
      await file.writeFile(data)
      await file.sync()
    } finally {
      await file.close()
    }
  },
  rename,
  remove: (path) => rm(path, { force: true }),
  makeFolder,
}

/**
 * Makes the folders of a path one by one. Node's own `recursive: true` never comes back from a file system that answers
 * "no such file" to a folder which it will not make, as Linux's /proc does.
 */
async function makeFolder(path: string): Promise<void> {
  try {
    await mkdir(path)
  } catch (error) {
    if (await isFolder(path)) return
    const above = dirname(path)
    if ((error as NodeJS.ErrnoException).code !== 'ENOENT' || above === path) throw error
    // Whoever else makes a folder there may have made it meanwhile.
    if (!(await isFolder(above))) await makeFolder(above)
    await mkdir(path).catch(async (again: unknown) => {
      if (!(await isFolder(path))) throw again
    })
  }
}

const isFolder = async (path: string): Promise<boolean> => {
  try {
    return (await stat(path)).isDirectory()
  } catch {
    return false
  }
}
