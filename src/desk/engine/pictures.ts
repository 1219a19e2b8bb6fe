import type { Root } from 'mdast'
import type { Finding } from '../../length/finding.ts'
import { placeOf } from '../../lesson/source.ts'
import {
  decodedUrl,
  farPicture,
  isFar,
  missingPicture,
  outsidePicture,
  type PictureTrouble,
} from '../../publish/picture-troubles.ts'
import { type Pictures, pictureNodes, pictureUrl } from '../../publish/picture-url.ts'
import type { PictureData } from './engine.ts'

const lessonFolder = 'the lesson’s folder'

/** The pictures of a lesson that can be shown, and a finding at each that cannot. Those that are still read are neither. */
export function shownPictures(
  tree: Root,
  data: PictureData,
): { readonly pictures: Pictures; readonly findings: readonly Finding[] } {
  const findings: Finding[] = []
  const told = new Set<string>()
  for (const node of pictureNodes(tree)) {
    const url = pictureUrl(node, tree)
    const trouble =
      url === undefined || told.has(url) ? undefined : pictureTrouble(url, data[url], lessonFolder)
    if (url !== undefined) told.add(url)
    if (trouble) findings.push({ severity: 'warning', place: placeOf(node.position), ...trouble })
  }
  return { pictures: new Map(Object.entries(data).filter(([, found]) => found !== '')), findings }
}

/**
 * Why a picture cannot be shown.
 *
 * @param data of it: empty where it was looked for in vain, undefined as long as nobody knows.
 */
export function pictureTrouble(
  url: string,
  data: string | undefined,
  folderName: string,
): PictureTrouble | undefined {
  if (isFar(url)) return farPicture(url, folderName)
  if (leadsOut(decodedUrl(url))) return outsidePicture(url, folderName)
  return data === '' ? missingPicture(url, folderName) : undefined
}

/** Whether a path begins at the top of a disk, or goes up further than down. */
function leadsOut(path: string): boolean {
  if (/^([\\/]|[a-z]:)/i.test(path)) return true
  let depth = 0
  for (const name of path.split(/[\\/]/)) {
    if (name === '..') depth--
    else if (name !== '.' && name !== '') depth++
    if (depth < 0) return true
  }
  return false
}
