import { basename, join, resolve } from 'node:path'
import { type Finding, suggestWord } from '../../length/finding.ts'
import { OutsideError, ThemeError } from '../../publish/problems.ts'
import { themeFolder, themeNames } from '../../publish/theme-folder.ts'
import type { LibraryFile, LibraryTheme } from '../../workshop/library/library-file.ts'
import { readLibrary } from '../../workshop/library/read-library.ts'
import type { Outside } from '../outside.ts'
import { readText } from '../read-text.ts'
import { hashOf, hashOfTheme } from './hashes.ts'

/** What a library file is called. */
export const libraryName = 'library.yaml'

/** A theme that was found. */
export interface FoundTheme {
  readonly text: string
  /** A name, or the path of a folder. */
  readonly theme: string
  readonly folder: string
  /** Changes whenever the theme does. */
  readonly hash: string
}

/** What a library asks for. */
export interface Settings {
  readonly file: LibraryFile
  readonly title: string
  readonly themes: readonly FoundTheme[]
  /** Of the library file, at `path`. */
  readonly path: string
  readonly findings: readonly Finding[]
}

/** Reads what the library in a folder asks for; without a file of its own it asks for what is usual. Throws OutsideError. */
export async function readSettings(folder: string, outside: Outside): Promise<Settings> {
  const path = join(folder, libraryName)
  const { file, findings } = readLibrary(await textOf(path, outside))
  const themes: FoundTheme[] = []
  const missing: Finding[] = []
  // What a theme does not have itself it may take from the usual one.
  const usual = await hashOfTheme(await themeFolder('step-sheet'))
  for (const theme of file.themes) {
    const found = await foundTheme(theme, folder, usual)
    if ('rule' in found) missing.push(found)
    else themes.push(found)
  }
  const title = file.title ?? titleOf(folder)
  return { file, title, themes, path, findings: [...findings, ...missing] }
}

async function textOf(path: string, outside: Outside): Promise<string> {
  const isThere = await outside.read(path).then(
    () => true,
    (error: { code?: string }) => error.code !== 'ENOENT',
  )
  return isThere ? readText(path, outside) : ''
}

async function foundTheme(
  { text, place }: LibraryTheme,
  folder: string,
  usual: string,
): Promise<FoundTheme | Finding> {
  const names = await themeNames()
  const theme = names.includes(text) ? text : resolve(folder, text)
  try {
    const found = await themeFolder(theme)
    return { text, theme, folder: found, hash: hashOf(usual, await hashOfTheme(found)) }
  } catch (error) {
    if (!(error instanceof ThemeError)) throw error
    const message = `Unexpected theme \`${text}\`, expected a theme of foldlore or a folder beside the library file`
    return { rule: 'theme', severity: 'error', message, suggestion: suggestWord(text, names), place }
  }
}

/** `our-lessons` is `Our lessons`. */
function titleOf(folder: string): string {
  const words = basename(resolve(folder)).replaceAll(/[-_]+/g, ' ').trim()
  return words === '' ? 'Lessons' : `${words[0]?.toUpperCase()}${words.slice(1)}`
}

/** Where prints go: a folder of their own, beside the lessons unless `-o` says. Throws OutsideError. */
export function outFolder(folder: string, output: string | undefined): string {
  const out = output ?? join(folder, 'prints')
  const [from, to] = [resolve(folder), resolve(out)]
  if (to !== from && !from.startsWith(join(to, '/'))) return out
  throw new OutsideError(
    `The prints cannot go into \`${out}\`: the lessons are in it`,
    'Name a folder of their own with `-o`',
  )
}
