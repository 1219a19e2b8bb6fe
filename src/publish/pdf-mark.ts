/**
 * Puts our name into the document information, where the browser has put its own: a later print may then take the
 * file's place. The new text is as long as the old, so that every offset in the file stays true.
 */
export function markOurs(pdf: Uint8Array): Uint8Array {
  const ours = '/Creator (foldlore)'
  const found = /\/Creator \((?:[^\\()]|\\.|\([^()]*\))*\)/.exec(
    Buffer.from(pdf.buffer, pdf.byteOffset, pdf.byteLength).toString('latin1'),
  )
  const marked = new Uint8Array(pdf)
  if (found && found[0].length >= ours.length)
    marked.set(Buffer.from(ours.padEnd(found[0].length), 'latin1'), found.index)
  return marked
}
