/** Something outside foldlore failed: a disk, a folder, a browser. The command line ends with exit code 3. */
export class OutsideError extends Error {
  override readonly name: string = 'OutsideError'
  readonly suggestion: string | undefined

  constructor(message: string, suggestion?: string) {
    super(message)
    this.suggestion = suggestion
  }
}

/** A PDF cannot be made, and whatever needs no browser can: what there is of it is not lost. */
export class BrowserError extends OutsideError {
  override readonly name: string = 'BrowserError'
}

/** There is no browser to print with, or the one there is does not start. */
export class NoBrowserError extends BrowserError {
  override readonly name = 'NoBrowserError'
}

/** A browser could not print a page, nor could another that was started in its place. */
export class PrintError extends BrowserError {
  override readonly name = 'PrintError'
}

/** A file stands where the print should go, and foldlore did not make it. */
export class NotOursError extends Error {
  override readonly name = 'NotOursError'
  readonly path: string
  readonly suggestion =
    'Choose another place for the handout, move the file away, or say that it may be overwritten'

  constructor(path: string) {
    super(`\`${path}\` was not made by foldlore, so it is not overwritten`)
    this.path = path
  }
}

/** A theme that cannot be used: its folder, its template, its style sheet. */
export class ThemeError extends Error {
  override readonly name = 'ThemeError'
  readonly suggestion: string | undefined

  constructor(message: string, suggestion?: string) {
    super(message)
    this.suggestion = suggestion
  }
}
