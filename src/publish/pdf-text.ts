/**
 * What is read off, and written into, a PDF as Chromium makes it. Its objects stand in it as plain text; only page
 * contents and fonts are packed.
 */

const textOf = (pdf: Uint8Array): string =>
  Buffer.from(pdf.buffer, pdf.byteOffset, pdf.byteLength).toString('latin1')

/** The objects that are pages: they alone have a media box. */
const pageObjects = (text: string): string[] =>
  [...text.matchAll(/\b\d+ 0 obj\s*<<\/Type \/Page\b(?!s).*?endobj/gs)].map(([object]) => object)

export const pageCount = (pdf: Uint8Array): number => pageObjects(textOf(pdf)).length

/**
 * Where the element `end` of the page came to stand.
 *
 * @returns how much of its page's height is above it, from 0 to 1; undefined when the page has no such element, or no
 * link that points to it.
 */
export function placeOfEnd(pdf: Uint8Array): { fill: number } | undefined {
  const text = textOf(pdf)
  const [, page, y] = /\/end \[(\d+) 0 R \/XYZ \S+ (\S+) /.exec(text) ?? []
  const object = pageObjects(text).find((found) => found.startsWith(`${page} 0 obj`))
  const height = Number(/\/MediaBox \[\S+ \S+ \S+ ([^\]]+)\]/.exec(object ?? '')?.[1])
  const fill = 1 - Number(y) / height
  return Number.isFinite(fill) ? { fill } : undefined
}

/**
 * Puts our name into the document information, where the browser has put its own: a later print may then take the
 * file's place. The new text is as long as the old, so that every offset in the file stays true.
 */
export function markOurs(pdf: Uint8Array): Uint8Array {
  const ours = '/Creator (foldlore)'
  const found = /\/Creator \((?:[^\\()]|\\.|\([^()]*\))*\)/.exec(textOf(pdf))
  const marked = new Uint8Array(pdf)
  if (found && found[0].length >= ours.length)
    marked.set(Buffer.from(ours.padEnd(found[0].length), 'latin1'), found.index)
  return marked
}
