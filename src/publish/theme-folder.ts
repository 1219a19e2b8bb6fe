import { readdir, stat } from 'node:fs/promises'
import { join, resolve } from 'node:path'
import { suggestWord } from '../length/finding.ts'
import { packageRoot } from './package-root.ts'
import { ThemeError } from './problems.ts'

const isFolder = (path: string): Promise<boolean> =>
  stat(path).then(
    (found) => found.isDirectory(),
    () => false,
  )

/** Names of the themes that come with foldlore. */
export async function themeNames(root: string = packageRoot()): Promise<string[]> {
  const entries = await readdir(join(root, 'themes'), { withFileTypes: true }).catch(() => [])
  return entries.filter((entry) => entry.isDirectory()).map((entry) => entry.name)
}

/**
 * Finds a theme.
 *
 * @param theme the name of one that comes with foldlore, or the path of a folder.
 * @throws ThemeError when it is neither.
 */
export async function themeFolder(theme: string, root: string = packageRoot()): Promise<string> {
  const own = join(root, 'themes', theme)
  const isName = /^[\w-]+$/.test(theme)
  if (isName && (await isFolder(own))) return own
  const path = resolve(theme)
  if (theme !== '' && (await isFolder(path))) return path
  const names = await themeNames(root)
  throw new ThemeError(
    `Unexpected theme \`${theme}\`, expected a theme of foldlore or the path of a folder`,
    suggestWord(theme, names),
  )
}
