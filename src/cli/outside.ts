import type { Outside as Disk } from '../publish/outside.ts'

/**
 * Everything a command touches besides its arguments, so that a test can hold it in its hands. Paths are as given;
 * calls to the disk fail as `node:fs` does, with a `code`.
 */
export interface Outside extends Disk {
  readonly env: Readonly<Record<string, string | undefined>>
  isFolder(path: string): Promise<boolean>
  stdout(text: string): void
  stderr(text: string): void
  /** Opens an address in the browser; gives whether it could. */
  openAddress(address: string): Promise<boolean>
  /** Comes back when the program is to end: Ctrl-C. */
  stopped(): Promise<void>
}
