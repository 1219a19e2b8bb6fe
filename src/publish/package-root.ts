import { existsSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'

/** The folder of this package: the nearest one above that has themes, be this the source or the bundle. */
export function packageRoot(): string {
  let folder = dirname(fileURLToPath(import.meta.url))
  while (!existsSync(join(folder, 'themes')) && dirname(folder) !== folder) folder = dirname(folder)
  return folder
}
