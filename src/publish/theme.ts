import { readdir, readFile } from 'node:fs/promises'
import { join, parse } from 'node:path'
import type { CatalogueView } from './catalogue-view.ts'
import type { LabelsView } from './kit-labels.ts'
import type { MotionView } from './motion/view.ts'
import { ThemeError } from './problems.ts'
import type { ScreenView } from './screen/view.ts'
import type { SheetsView } from './sheets-view.ts'
import type { SizeChartView } from './size-chart-view.ts'
import { compileTemplate, type TemplateFile } from './template.ts'
import { themeFolder } from './theme-folder.ts'
import type { TracingView } from './tracing-view.ts'
import type { HandoutView } from './view.ts'

/** How a page looks: what it says where, and a style sheet. */
export interface Theme<View = HandoutView> {
  readonly css: string
  /** The body of the page. Throws ThemeError. */
  readonly body: (view: View) => string
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

/**
 * Loads how a theme shows the catalogue of folds: `catalogue.hbs`, and `catalogue.css` on top of the style sheet of its
 * handouts.
 *
 * @throws ThemeError as for a handout.
 */
export const loadCatalogueTheme = (theme: string): Promise<Theme<CatalogueView>> =>
  loadPage(theme, 'catalogue')

/** Loads how a theme shows the chart of a lesson's sizes: `size-chart.hbs`, and `size-chart.css` on top, likewise. */
export const loadSizeChartTheme = (theme: string): Promise<Theme<SizeChartView>> =>
  loadPage(theme, 'size-chart')

/** Loads how a theme shows templates at their real size: `tracing.hbs`, and `tracing.css` on top, likewise. */
export const loadTracingTheme = (theme: string): Promise<Theme<TracingView>> => loadPage(theme, 'tracing')

/** Loads how a theme shows the labels of a class: `labels.hbs`, and `labels.css` on top, likewise. */
export const loadLabelsTheme = (theme: string): Promise<Theme<LabelsView>> => loadPage(theme, 'labels')

/** Loads how a theme shows the fold in motion: `motion.hbs`, and `motion.css` on top, likewise. */
export const loadMotionTheme = (theme: string): Promise<Theme<MotionView>> => loadPage(theme, 'motion')

/** Loads how a theme shows a lesson on the screen of a class: `screen.hbs`, and `screen.css` on top, likewise. */
export const loadScreenTheme = (theme: string): Promise<Theme<ScreenView>> => loadPage(theme, 'screen')

/** Loads how a theme shows a cutting plan: `sheets.hbs`, and `sheets.css` on top, likewise. */
export const loadSheetsTheme = (theme: string): Promise<Theme<SheetsView>> => loadPage(theme, 'sheets')

async function loadPage<View extends object>(theme: string, page: string): Promise<Theme<View>> {
  const folder = await themeFolder(theme)
  const [main, base, own] = await Promise.all([
    readPart(folder, `${page}.hbs`),
    readPart(folder, 'handout.css'),
    readPart(folder, `${page}.css`),
  ])
  return { css: `${base.text}\n${own.text}`, body: compileTemplate(main) }
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
