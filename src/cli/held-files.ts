import type { FileToWrite } from '../publish/write.ts'
import type { Outside } from './outside.ts'

/** A disk on which nothing is written yet. */
export interface HeldFiles {
  /** Reads the real disk, and keeps what is written to it. */
  readonly outside: Outside
  /** What would have been written, in that order. */
  readonly files: () => FileToWrite[]
}

/** Holds back all that is written, so that many files can appear together when the last of them is made, or none. */
export function holdFiles(outside: Outside): HeldFiles {
  const held = new Map<string, Uint8Array>()
  return {
    outside: {
      ...outside,
      async create(path, data) {
        held.set(path, data)
      },
      async rename(from, to) {
        const data = held.get(from)
        held.delete(from)
        if (data) held.set(to, data)
      },
      async remove(path) {
        held.delete(path)
      },
      async makeFolder() {},
    },
    files: () => [...held].map(([path, data]) => ({ path, data })),
  }
}
