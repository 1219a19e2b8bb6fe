import { readdir, readFile } from 'node:fs/promises'
import { join, parse } from 'node:path'
import { ThemeError } from './problems.ts'
import { compileTemplate, type TemplateFile } from './template.ts'
import { themeFolder } from './theme-folder.ts'
import type { HandoutView } from './view.ts'

/** How a handout looks: what its pages say where, and a style sheet. */
export interface Theme {
  readonly css: string
  /** The body of the page. Throws ThemeError. */
  readonly body: (view: HandoutView) => string
}

/**
 * Loads a theme: a folder with `handout.hbs`, `handout.css` and, if it likes, `partials/NAME.hbs`.
 *
 * @param theme the name of one that comes with foldlore, or the path of a folder.
 * @throws ThemeError when there is no such theme, or with file and line when its template is broken.
 */
export async function loadTheme(theme: string): Promise<Theme> {
  const folder = await themeFolder(theme)
  const [main, css, partials] = await Promise.all([
    readPart(folder, 'handout.hbs'),
    readPart(folder, 'handout.css'),
    readPartials(join(folder, 'partials')),
  ])
  return { css: css.text, body: compileTemplate(main, partials) }
}

async function readPart(folder: string, name: string): Promise<TemplateFile> {
  const path = join(folder, name)
  try {
    return { path, text: await readFile(path, 'utf8') }
  } catch {
    throw new ThemeError(
      `The theme in \`${folder}\` has no \`${name}\``,
      'Add that file, or choose another theme',
    )
  }
}

async function readPartials(folder: string): Promise<Map<string, TemplateFile>> {
  const names = await readdir(folder).catch(() => [])
  const files = names.filter((name) => name.endsWith('.hbs')).sort()
  return new Map(
    await Promise.all(files.map(async (name) => [parse(name).name, await readPart(folder, name)] as const)),
  )
}
