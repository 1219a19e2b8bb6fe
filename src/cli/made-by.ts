const marks = ['<meta name="generator" content="foldlore', '/Creator (foldlore']

/** Whether a file says of itself that foldlore made it, as its pages and PDFs do: it may be made again. */
export function madeByFoldlore(bytes: Uint8Array): boolean {
  const text = new TextDecoder('latin1').decode(bytes)
  return marks.some((mark) => text.includes(mark))
}
