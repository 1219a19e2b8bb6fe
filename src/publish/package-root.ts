import { existsSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'

/** The folder of this package: the nearest one above with its themes, be this the source or the bundle. */
export function packageRoot(): string {
  let folder = dirname(fileURLToPath(import.meta.url))
  const isRoot = (): boolean => ['package.json', 'themes'].every((name) => existsSync(join(folder, name)))
  while (!isRoot() && dirname(folder) !== folder) folder = dirname(folder)
  return folder
}
