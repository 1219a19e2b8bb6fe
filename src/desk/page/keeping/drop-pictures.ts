const picturesIn = (list: FileList | undefined | null): File[] => [...(list ?? [])]

/**
 * Hears of pictures that are dropped on the writing or pasted into it.
 *
 * @param take gets all files that were dropped; which of them are pictures shows when they are read.
 * @returns what stops it.
 */
export function hearPictures(writing: HTMLElement, take: (files: readonly File[]) => void): () => void {
  const ending = new AbortController()
  // Before the editor, which would put the bytes of a file in as text.
  const options = { capture: true, signal: ending.signal }
  writing.addEventListener(
    'drop',
    (event) => {
      const files = picturesIn(event.dataTransfer?.files)
      if (files.length === 0) return
      event.preventDefault()
      event.stopPropagation()
      take(files)
    },
    options,
  )
  writing.addEventListener(
    'paste',
    (event) => {
      const files = picturesIn(event.clipboardData?.files)
      // Other programs put a picture of the words beside the words.
      if (files.length === 0 || event.clipboardData?.types.includes('text/plain')) return
      event.preventDefault()
      event.stopPropagation()
      take(files)
    },
    options,
  )
  return () => ending.abort()
}

/** A file that is dropped beside the writing must not take the place of the page. */
export function keepPageOnDrop(): void {
  for (const kind of ['dragover', 'drop'] as const)
    addEventListener(kind, (event) => {
      if (event.dataTransfer?.types.includes('Files')) event.preventDefault()
    })
}
