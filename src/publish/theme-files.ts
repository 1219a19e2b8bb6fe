import { readdir, readFile } from 'node:fs/promises'
import { join, parse } from 'node:path'
import { ThemeError } from './problems.ts'
import type { TemplateFile } from './template.ts'
import { themeFolder } from './theme-folder.ts'

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
  try {
    return { path, text: await readFile(path, 'utf8') }
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return undefined
    throw new ThemeError(`Cannot read \`${path}\``, 'Look whether it is a file that you may read')
  }
}

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
  const order = base ? [base, ...others, own] : [own, ...others]
  return order.flatMap((file) => (file ? [file.text] : [])).join('\n')
}
