/** Everything a command touches besides its arguments, so that a test can hold it in its hands. Paths are as given. */
export interface Outside {
  readonly env: Readonly<Record<string, string | undefined>>
  /** Gives the whole file. Throws OutsideError. */
  read(path: string): Promise<Uint8Array>
  /** Writes the whole file or nothing, and makes its folder if need be. Throws OutsideError. */
  write(path: string, content: string | Uint8Array): Promise<void>
  /** What stands at a path, if anything. */
  exists(path: string): Promise<'file' | 'folder' | undefined>
  stdout(text: string): void
  stderr(text: string): void
}
