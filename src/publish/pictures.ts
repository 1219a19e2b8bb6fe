import { isAbsolute, join, relative } from 'node:path'
import type { Root } from 'mdast'
import type { Finding } from '../length/finding.ts'
import { placeOf } from '../lesson/source.ts'
import type { Outside } from './outside.ts'
import { pictureKind } from './picture-kind.ts'
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
): Promise<string | Pick<Finding, 'rule' | 'message' | 'suggestion'>> {
  // A scheme has two letters at least: `c:` is a drive.
  if (/^([a-z][a-z\d+.-]+:|\/\/)/i.test(url))
    return {
      rule: 'picture-far',
      message: `The picture \`${short(url)}\` is not in a file beside the lesson`,
      suggestion: `Save it in ${folderName} and name that file`,
    }
  const path = join(folder, decoded(url))
  const inside = relative(folder, path)
  if (isAbsolute(decoded(url)) || isAbsolute(inside) || inside.startsWith('..'))
    return {
      rule: 'picture-outside',
      message: `The picture \`${short(url)}\` is outside ${folderName}`,
      suggestion: `Copy it into ${folderName} and name it from there`,
    }
  let content: Buffer
  try {
    const bytes = await outside.read(path)
    content = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength)
  } catch {
    return {
      rule: 'picture-missing',
      message: `The picture \`${short(url)}\` cannot be read`,
      suggestion: `Check the name of the file, counted from ${folderName}`,
    }
  }
  const type = pictureKind(content)
  if (type === undefined)
    return {
      rule: 'picture-kind',
      message: `\`${short(url)}\` is no picture that can be printed`,
      suggestion: 'Save it as PNG, JPEG, WebP, GIF or SVG',
    }
  if (content.length > most)
    return {
      rule: 'picture-heavy',
      message: `The picture \`${short(url)}\` has ${Math.ceil(content.length / 1e6)} MB, more than a page can carry`,
      suggestion: `Save a smaller copy of it, of at most ${most / 1e6} MB`,
    }
  return `data:${type};base64,${content.toString('base64')}`
}

function decoded(url: string): string {
  try {
    return decodeURIComponent(url.replace(/[?#].*$/, ''))
  } catch {
    return url
  }
}

const short = (url: string): string => (url.length > 60 ? `${url.slice(0, 57)}…` : url)
