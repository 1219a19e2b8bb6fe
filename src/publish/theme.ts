import type { CatalogueView } from './catalogue-view.ts'
import type { LabelsView } from './kit-labels.ts'
import type { MotionView } from './motion/view.ts'
import { onePageTypes } from './one-page.ts'
import type { ScreenView } from './screen/view.ts'
import type { SheetsView } from './sheets-view.ts'
import type { SizeChartView } from './size-chart-view.ts'
import { compileTemplate } from './template.ts'
import { partials, styles, template, themeFiles } from './theme-files.ts'
import { readThemePrint, type ThemePrint, usualPrint } from './theme-print.ts'
import type { TracingView } from './tracing-view.ts'
import type { HandoutView } from './view.ts'

/** How a page looks: what it says where, and a style sheet. */
export interface Theme<View = HandoutView> {
  readonly css: string
  /** The body of the page. Throws ThemeError. */
  readonly body: (view: View) => string
}

/** How a theme shows handouts, and how it lays them on paper. */
export interface HandoutTheme extends Theme {
  readonly print: ThemePrint
}

/**
 * Loads a theme: a folder with `handout.hbs`, `handout.css`, `partials/NAME.hbs` and `theme.yaml`, as far as it wants any
 * of them other than the step sheet has them. What it lacks is taken from there, and its style sheets come on top.
 *
 * @param theme the name of one that comes with foldlore, or the path of a folder.
 * @throws ThemeError when there is no such theme, or with file and line when a file of it is broken.
 */
export async function loadTheme(theme: string): Promise<HandoutTheme> {
  const files = await themeFiles(theme)
  const [main, parts, settings] = await Promise.all([
    template(files, 'handout.hbs'),
    partials(files),
    files.own('theme.yaml'),
  ])
  const print = settings ? readThemePrint(settings.text, settings.path) : usualPrint
  const sheets = await styles(files, 'handout.css', print.pages === 'half' ? ['half-page.css'] : [])
  const css = print.fit === 'one page' ? `${onePageTypes}\n${sheets}` : sheets
  return { css, body: compileTemplate(main, parts), print }
}

/** The style sheet of a theme for lists on whole pages. Throws ThemeError when there is no such theme. */
export const loadStyle = async (theme: string): Promise<string> =>
  styles(await themeFiles(theme), 'handout.css')

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
  const files = await themeFiles(theme)
  const [main, base, own] = await Promise.all([
    template(files, `${page}.hbs`),
    styles(files, 'handout.css'),
    styles(files, `${page}.css`),
  ])
  return { css: `${base}\n${own}`, body: compileTemplate(main) }
}
