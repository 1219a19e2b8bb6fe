import { readFile, stat } from 'node:fs/promises'
import { posix } from 'node:path'
import { workshopName } from '../../publish/brand/workshop.ts'
import { placeIn } from './place.ts'
import { mostText } from './text-file.ts'

/** A `workshop.yaml` of the folder, by its path from there. */
export interface FoundWorkshop {
  readonly path: string
  /** Undefined where it cannot be read. */
  readonly text?: string
}

/**
 * The file that speaks for a lesson or class file: in its folder or in the one above, as far as that is in the folder of
 * the desk.
 *
 * @throws Refused when the path leads out.
 */
export async function workshopFor(path: string, folder: string): Promise<FoundWorkshop | undefined> {
  const own = path.includes('/') ? posix.dirname(path) : ''
  for (const at of own === '' ? [''] : [own, own.includes('/') ? posix.dirname(own) : '']) {
    const found = at === '' ? workshopName : `${at}/${workshopName}`
    const place = await placeIn(folder, found, 'text')
    const about = await stat(place).catch(() => undefined)
    if (!about) continue
    const text = about.isFile() && about.size <= mostText ? await textIn(place) : undefined
    return { path: found, ...(text !== undefined && { text }) }
  }
  return undefined
}

/**
 * The bytes of such a file by its path, for printing.
 *
 * @throws an error with the code `ENOENT` when it is not there, or not in the folder of the desk.
 */
export async function workshopBytes(path: string, folder: string): Promise<Uint8Array> {
  const place = await placeIn(folder, path, 'text').catch(() => undefined)
  const about = place === undefined ? undefined : await stat(place).catch(() => undefined)
  if (place === undefined || !about) throw Object.assign(new Error('no such file'), { code: 'ENOENT' })
  if (!about.isFile() || about.size > mostText) throw Object.assign(new Error('no text'), { code: 'EFBIG' })
  return readFile(place)
}

async function textIn(place: string): Promise<string | undefined> {
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(await readFile(place))
  } catch {
    return undefined
  }
}
