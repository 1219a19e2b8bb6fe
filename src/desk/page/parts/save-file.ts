import type { MadeFile } from '../../engine/engine.ts'

/** Hands a file over to the browser, which puts it where downloads go. */
export function saveFile(name: string, content: Blob): void {
  const address = URL.createObjectURL(content)
  const link = document.createElement('a')
  link.href = address
  link.download = name
  link.click()
  // The browser has taken it in by then, whatever it does with it.
  setTimeout(() => URL.revokeObjectURL(address), 60_000)
}

export const blobOf = ({ data, type }: MadeFile): Blob => new Blob([data as BlobPart], { type })
