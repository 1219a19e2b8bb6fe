import { join } from 'node:path'
import type { Outside } from '../outside.ts'
import { unreadWorkshop, type WorkshopFile, type WorkshopSays, workshopIn, workshopName } from './workshop.ts'

/**
 * Reads what a workshop says of all its prints: in the lesson's own folder, or else in the one above it.
 *
 * @returns undefined where neither has such a file.
 */
export async function readWorkshop(
  folder: string,
  outside: Pick<Outside, 'read'>,
): Promise<WorkshopFile | undefined> {
  for (const at of [folder, join(folder, '..')]) {
    const path = join(at, workshopName)
    const read = await textAt(path, outside)
    if (read === undefined) continue
    return { path, folder: at, ...('wish' in read ? read : workshopIn(read.text)) }
  }
  return undefined
}

async function textAt(
  path: string,
  outside: Pick<Outside, 'read'>,
): Promise<{ text: string } | WorkshopSays | undefined> {
  let bytes: Uint8Array
  try {
    bytes = await outside.read(path)
  } catch (error) {
    const { code } = error as { code?: string }
    if (code === 'ENOENT' || code === 'ENOTDIR') return undefined
    return unreadWorkshop('This file cannot be read', 'Look whether it is a file that you may read')
  }
  try {
    return { text: new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes) }
  } catch {
    return unreadWorkshop('This file is not UTF-8 text', 'Save it as UTF-8 in your editor')
  }
}
