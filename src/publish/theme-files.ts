import { readdir } from 'node:fs/promises'
import { join, parse } from 'node:path'
import { openCss } from './open-css.ts'
import { ThemeError } from './problems.ts'
import { readWhole } from './read-file.ts'
import type { TemplateFile } from './template.ts'
import { themeFolder } from './theme-folder.ts'
import { mostBytes, themeLimits } from './theme-limits.ts'

/** The theme that others are made on top of. */
export const baseTheme = 'step-sheet'

/** The files of a theme, and those of the step sheet below it. */
export interface ThemeFiles {
  readonly folder: string
  /** A file of the theme itself; undefined when it has none. Throws ThemeError when it cannot be read. */
  readonly own: (name: string) => Promise<TemplateFile | undefined>
  /** The same of the step sheet; of itself it is not made on top. */
  readonly base: (name: string) => Promise<TemplateFile | undefined>
  readonly partialNames: () => Promise<string[]>
}

/** Opens a theme. Throws ThemeError when there is none of that name. */
export async function themeFiles(theme: string): Promise<ThemeFiles> {
  const [folder, base] = await Promise.all([themeFolder(theme), themeFolder(baseTheme)])
  const isBase = folder === base
  const namesIn = (at: string): Promise<string[]> => readdir(at).catch(() => [])
  if (!(await namesIn(folder)).some(isOfTheme))
    throw new ThemeError(
      `There is nothing of a theme in \`${folder}\``,
      `Put a file of \`${base}\` there and change it, such as \`handout.css\``,
    )
  return {
    folder,
    own: (name) => fileIn(folder, name),
    base: async (name) => (isBase ? undefined : fileIn(base, name)),
    partialNames: async () =>
      [...new Set((await Promise.all([base, folder].map((at) => namesIn(join(at, 'partials'))))).flat())]
        .filter((name) => name.endsWith('.hbs'))
        .sort(),
  }
}

const isOfTheme = (name: string): boolean => /\.(hbs|css)$|^(partials|theme\.yaml)$/.test(name)

async function fileIn(folder: string, name: string): Promise<TemplateFile | undefined> {
  const path = join(folder, name)
  const bytes = await readWhole(path, mostBytes(name)).catch((error: NodeJS.ErrnoException) => {
    if (error.code === 'ENOENT') return undefined
    if (error.code !== 'EFBIG')
      throw new ThemeError(`Cannot read \`${path}\``, 'Look whether it is a file that you may read')
    throw new ThemeError(`${path}: it has more than ${inWords(mostBytes(name))}`, tooLarge(name))
  })
  if (!bytes) return undefined
  try {
    return { path, text: new TextDecoder('utf-8', { fatal: true }).decode(bytes) }
  } catch {
    throw new ThemeError(`${path}: it is not written in UTF-8`, 'Save it as UTF-8 in your editor')
  }
}

const inWords = (bytes: number): string =>
  bytes >= 1_000_000 ? `${bytes / 1_000_000} MB` : `${bytes / 1000} kB`

const tooLarge = (name: string): string =>
  name.endsWith('.css')
    ? 'Put smaller pictures and fonts into it: a font needs only the letters that a handout has'
    : name.endsWith('.hbs')
      ? 'Move parts of it into partials, and pictures into the style sheet'
      : 'Keep only the settings that differ'

/** A template of the theme, or else of the step sheet. Throws ThemeError when neither has it. */
export async function template(files: ThemeFiles, name: string): Promise<TemplateFile> {
  const found = (await files.own(name)) ?? (await files.base(name))
  if (found) return found
  throw new ThemeError(
    `The theme in \`${files.folder}\` has no \`${name}\``,
    'Add that file, or choose another theme',
  )
}

/** The partials of both, by their names. */
export async function partials(files: ThemeFiles): Promise<Map<string, TemplateFile>> {
  const names = await files.partialNames()
  if (names.length > themeLimits.partials)
    throw new ThemeError(
      `${join(files.folder, 'partials')}: there are more than ${themeLimits.partials} partials`,
      'Take out those that no template includes',
    )
  const read = await Promise.all(
    names.map(async (name) => [parse(name).name, await template(files, join('partials', name))] as const),
  )
  return new Map(read)
}

/**
 * The style sheets of that name, of the step sheet and, on top, of the theme.
 *
 * @param between names of others that come between the two, from the theme or else from the step sheet.
 */
export async function styles(
  files: ThemeFiles,
  name: string,
  between: readonly string[] = [],
): Promise<string> {
  const [base, own, ...others] = await Promise.all([
    files.base(name),
    files.own(name),
    ...between.map((other) => template(files, other)),
  ])
  if (!base && !own) await template(files, name)
  if (own) checkClosed(own)
  const order = base ? [base, ...others, own] : [own, ...others]
  return order.flatMap((file) => (file ? [file.text] : [])).join('\n')
}

/** Throws ThemeError with the place of what is left open in a style sheet. */
function checkClosed({ path, text }: TemplateFile): void {
  const open = openCss(text)
  if (open) throw new ThemeError(`${path}:${open.line}:${open.column}: ${open.message}`, open.suggestion)
}
