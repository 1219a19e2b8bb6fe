import { isAbsolute, join, relative } from 'node:path'
import type { Root } from 'mdast'
import type { Finding } from '../length/finding.ts'
import { placeOf } from '../lesson/source.ts'
import type { Outside } from './outside.ts'
import { pictureKind } from './picture-kind.ts'
import {
  decodedUrl,
  farPicture,
  heavyPicture,
  isFar,
  missingPicture,
  noPicture,
  outsidePicture,
  type PictureTrouble,
} from './picture-troubles.ts'
import { type Pictures, pictureNodes, pictureUrl } from './picture-url.ts'

/** A print that stands alone carries its pictures: more than this, in bytes, is too much to carry. */
const heaviest = 10_000_000

/**
 * Reads the pictures that a lesson shows, as data that goes into the page.
 *
 * @param folder the lesson's own folder: pictures are taken from there and below, and from nowhere else.
 * @returns those that can be shown, and a finding at each that cannot.
 */
export async function readPictures(
  tree: Root,
  folder: string,
  outside: Pick<Outside, 'read'>,
): Promise<{ pictures: Pictures; findings: Finding[] }> {
  const pictures = new Map<string, string>()
  const findings: Finding[] = []
  for (const node of pictureNodes(tree)) {
    const url = pictureUrl(node, tree)
    if (url === undefined || pictures.has(url)) continue
    const read = await readPicture(url, folder, outside)
    if (typeof read === 'string') pictures.set(url, read)
    else findings.push({ severity: 'warning', place: placeOf(node.position), ...read })
  }
  return { pictures, findings }
}

/**
 * Reads one picture as data that goes into a page.
 *
 * @param url its address as written, from `folder`.
 * @param limits how many bytes it may have, and what `folder` is called in messages.
 * @returns the data, or what is wrong with it.
 */
export async function readPicture(
  url: string,
  folder: string,
  outside: Pick<Outside, 'read'>,
  { most = heaviest, folderName = 'the lesson’s folder' } = {},
): Promise<string | PictureTrouble> {
  if (isFar(url)) return farPicture(url, folderName)
  const named = decodedUrl(url)
  const path = join(folder, named)
  const inside = relative(folder, path)
  if (isAbsolute(named) || isAbsolute(inside) || inside.startsWith('..'))
    return outsidePicture(url, folderName)
  let content: Buffer
  try {
    const bytes = await outside.read(path)
    content = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength)
  } catch {
    return missingPicture(url, folderName)
  }
  const type = pictureKind(content)
  if (type === undefined) return noPicture(url)
  if (content.length > most) return heavyPicture(url, content.length, most)
  return `data:${type};base64,${content.toString('base64')}`
}
