import { isAbsolute, join, relative } from 'node:path'
import type { Definition, Image, ImageReference, Root } from 'mdast'
import { visit } from 'unist-util-visit'
import type { Finding } from '../length/finding.ts'
import { placeOf } from '../lesson/source.ts'
import type { Outside } from './outside.ts'

/** The pictures of a lesson, by the address that stands in it. */
export type Pictures = ReadonlyMap<string, string>

/** A print that stands alone carries its pictures: more than this, in bytes, is too much to carry. */
const heaviest = 10_000_000

/** Kinds of pictures by the first bytes of their files: the name of a file can say anything. */
const kinds: readonly (readonly [type: string, starts: (text: string) => boolean])[] = [
  ['image/png', (text) => text.startsWith('\x89PNG\r\n\x1a\n')],
  ['image/jpeg', (text) => text.startsWith('\xff\xd8\xff')],
  ['image/gif', (text) => /^GIF8[79]a/.test(text)],
  ['image/webp', (text) => /^RIFF....WEBP/s.test(text)],
  [
    'image/svg+xml',
    (text) =>
      /^(\xef\xbb\xbf)?\s*(<\?xml[^>]*>\s*)?(<!--(?:(?!-->).)*-->\s*|<!DOCTYPE[^>]*>\s*)*<svg[\s>]/s.test(
        text,
      ),
  ],
]

/** Where a picture's address stands in the tree: in the picture itself or in a definition below. */
export const pictureUrl = (node: Image | ImageReference, tree: Root): string | undefined => {
  if (node.type === 'image') return node.url
  let url: string | undefined
  visit(tree, 'definition', (definition: Definition) => {
    if (definition.identifier === node.identifier) url ??= definition.url
  })
  return url
}

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
  const nodes: (Image | ImageReference)[] = []
  visit(tree, (node) => {
    if (node.type === 'image' || node.type === 'imageReference') nodes.push(node)
  })
  const pictures = new Map<string, string>()
  const findings: Finding[] = []
  for (const node of nodes) {
    const url = pictureUrl(node, tree)
    if (url === undefined || pictures.has(url)) continue
    const read = await readPicture(url, folder, outside)
    if (typeof read === 'string') pictures.set(url, read)
    else findings.push({ severity: 'warning', place: placeOf(node.position), ...read })
  }
  return { pictures, findings }
}

async function readPicture(
  url: string,
  folder: string,
  outside: Pick<Outside, 'read'>,
): Promise<string | Pick<Finding, 'rule' | 'message' | 'suggestion'>> {
  // A scheme has two letters at least: `c:` is a drive.
  if (/^([a-z][a-z\d+.-]+:|\/\/)/i.test(url))
    return {
      rule: 'picture-far',
      message: `The picture \`${short(url)}\` is not in a file beside the lesson`,
      suggestion: 'Save it in the lesson’s folder and name that file',
    }
  const path = join(folder, decoded(url))
  const inside = relative(folder, path)
  if (isAbsolute(decoded(url)) || isAbsolute(inside) || inside.startsWith('..'))
    return {
      rule: 'picture-outside',
      message: `The picture \`${short(url)}\` is outside the lesson’s folder`,
      suggestion: 'Copy it into the lesson’s folder and name it from there',
    }
  let content: Buffer
  try {
    const bytes = await outside.read(path)
    content = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength)
  } catch {
    return {
      rule: 'picture-missing',
      message: `The picture \`${short(url)}\` cannot be read`,
      suggestion: 'Check the name of the file, counted from the lesson’s folder',
    }
  }
  const start = content.subarray(0, 2000).toString('latin1')
  const [type] = kinds.find(([, starts]) => starts(start)) ?? []
  if (type === undefined)
    return {
      rule: 'picture-kind',
      message: `\`${short(url)}\` is no picture that can be printed`,
      suggestion: 'Save it as PNG, JPEG, WebP, GIF or SVG',
    }
  if (content.length > heaviest)
    return {
      rule: 'picture-heavy',
      message: `The picture \`${short(url)}\` has ${Math.ceil(content.length / 1e6)} MB, more than a page can carry`,
      suggestion: 'Save a smaller copy of it, of at most 10 MB',
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
