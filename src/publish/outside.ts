import { mkdir, open, readFile, rename, rm } from 'node:fs/promises'

/** The disk, as far as publishing needs it. Each call fails as `node:fs` does, with a `code`. */
export interface Outside {
  /** The whole file. */
  read(path: string): Promise<Uint8Array>
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
  read: (path) => readFile(path),
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
  makeFolder: async (path) => {
    await mkdir(path, { recursive: true })
  },
}
