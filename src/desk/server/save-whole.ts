import { randomUUID } from 'node:crypto'
import { dirname, join } from 'node:path'
import { plainError } from '../../publish/write.ts'
import type { SavingDisk } from './disk.ts'
import { Refused } from './refused.ts'

/** What a save is called until it is whole. Hidden, so no list shows it; short, so a long name stays possible. */
const draftName = (): string => `.foldlore-${randomUUID()}.part`

/** Whether a file is what a desk that was killed in mid-save has left behind. */
export const isDraft = (name: string): boolean => /^\.foldlore-[\da-f-]{36}\.part$/.test(name)

/**
 * Writes a file whole or not at all: under another name in its folder first, and once that lies on the disk, under its
 * own. Whoever reads it, or cuts the power, at any moment finds the old bytes or the new ones.
 *
 * @param overwrite whether a file that is there is replaced, with its rights kept.
 * @param still asked when all is written, right before the name changes hands: whether to go on.
 * @returns false when a file is there that may not be replaced, or `still` says so.
 * @throws OutsideError in plain words when the disk refuses, Refused when it is full; then nothing is left of the attempt.
 */
export async function saveWhole(
  path: string,
  data: Uint8Array,
  overwrite: boolean,
  disk: SavingDisk,
  still: () => Promise<boolean> = async () => true,
): Promise<boolean> {
  const folder = dirname(path)
  const draft = join(folder, draftName())
  try {
    await inPlainWords(async () => {
      await disk.makeFolder(folder)
      await disk.create(draft, data)
      const mode = overwrite ? await disk.mode(path) : undefined
      if (mode !== undefined) await disk.setMode(draft, mode)
    })
    if (!(await still())) return false
    const placed = overwrite ? await replaced(draft, path, disk) : await placedAnew(draft, path, disk)
    // Whether the new name survives a power cut is settled by the next moment; the file is whole whichever way.
    if (placed) await disk.settle(folder).catch(() => {})
    return placed
  } finally {
    await disk.remove(draft).catch(() => {})
  }
}

/** No room: whoever saves may want to know that apart from all else. */
const full: ReadonlySet<string> = new Set(['ENOSPC', 'EDQUOT'])

async function inPlainWords(act: () => Promise<void>): Promise<true> {
  await act().catch((error: unknown) => {
    const plain = plainError(error, 'Cannot save')
    const { message, suggestion } = plain
    if (!full.has((error as NodeJS.ErrnoException).code ?? '')) throw plain
    throw new Refused(507, message, { ...(suggestion && { suggestion }) })
  })
  return true
}

const replaced = (draft: string, path: string, disk: SavingDisk): Promise<true> =>
  inPlainWords(() => disk.rename(draft, path))

/** Puts a draft where nothing is. A second name is never given over another file, a new name is. */
async function placedAnew(draft: string, path: string, disk: SavingDisk): Promise<boolean> {
  try {
    await disk.link(draft, path)
    return true
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'EEXIST') return false
  }
  // Memory cards and sticks have no second names. Then a moment is left in which another program could be first.
  if ((await disk.mode(path)) !== undefined) return false
  return replaced(draft, path, disk)
}
