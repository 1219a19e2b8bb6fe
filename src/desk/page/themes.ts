import Handlebars from 'handlebars'
import { onePageTypes } from '../../publish/one-page.ts'
import { registerSay } from '../../publish/say-helper.ts'
import { marked } from '../../publish/template-view.ts'
import { readThemePrint, usualPrint } from '../../publish/theme-print.ts'
import type { HandoutView } from '../../publish/view.ts'
import type { PageTheme } from '../engine/look.ts'

const folder = '../../../themes'
/** What a theme does not have is taken from this one, and its style sheets come on top of these. */
const base = 'step-sheet'
const nameOf = (path: string): string => path.slice(folder.length + 1).split('/')[0] ?? ''
const styles = import.meta.glob<string>('../../../themes/*/*.css', {
  eager: true,
  query: '?raw',
  import: 'default',
})
const pages = import.meta.glob<TemplateSpecification>('../../../themes/*/*.hbs', {
  eager: true,
  import: 'default',
})
const partials = import.meta.glob<TemplateSpecification>('../../../themes/*/partials/*.hbs', {
  eager: true,
  import: 'default',
})

const settings = import.meta.glob<string>('../../../themes/*/theme.yaml', {
  eager: true,
  query: '?raw',
  import: 'default',
})

/** The names of the themes that come with foldlore. */
export const themeNames: readonly string[] = [
  ...new Set([...Object.keys(styles), ...Object.keys(settings)].map(nameOf)),
].sort()

/**
 * How a theme shows something on whole pages: its templates were made into functions when the page was built.
 *
 * @param page `handout`, `size-chart` or another; its style sheet comes on top of the one of handouts.
 */
export function themePage<View extends object>(
  theme: string,
  page: string,
): { readonly css: string; readonly body: (view: View) => string } {
  const layers = [...new Set([base, theme])].map((name) => `${folder}/${name}`)
  const spec = layers.map((at) => pages[`${at}/${page}.hbs`]).findLast((one) => one !== undefined)
  if (!spec) throw new RangeError(`The theme \`${theme}\` has no \`${page}.hbs\``)
  const handlebars = Handlebars.create()
  registerSay(handlebars)
  for (const at of layers)
    for (const [path, partial] of Object.entries(partials).filter(([path]) => path.startsWith(`${at}/`)))
      handlebars.registerPartial(/([^/]+)\.hbs$/.exec(path)?.[1] ?? '', handlebars.template(partial))
  const render = handlebars.template(spec)
  const css = ['handout', ...(page === 'handout' ? [] : [page])].flatMap((name) =>
    layers.map((at) => styles[`${at}/${name}.css`] ?? ''),
  )
  return { css: css.join('\n'), body: (view) => render(marked(view)) }
}

/** How a theme shows handouts, on the pages that it has them printed on (see `src/publish/theme.ts`). */
export function themeHandout(theme: string): PageTheme {
  const path = `${folder}/${theme}/theme.yaml`
  const text = settings[path]
  const print = text === undefined ? usualPrint : readThemePrint(text, path)
  const { body } = themePage<HandoutView>(theme, 'handout')
  const sheets = [
    styles[`${folder}/${base}/handout.css`],
    ...(print.pages === 'half' ? [styles[`${folder}/${base}/half-page.css`]] : []),
    ...(theme === base ? [] : [styles[`${folder}/${theme}/handout.css`]]),
  ]
  const css = [
    ...(print.fit === 'one page' ? [onePageTypes] : []),
    ...sheets.filter((one) => one !== undefined),
  ]
  return { css: css.join('\n'), body, print }
}
