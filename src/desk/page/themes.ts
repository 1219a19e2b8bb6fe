import Handlebars from 'handlebars'
import { registerSay } from '../../publish/say-helper.ts'
import { marked } from '../../publish/template-view.ts'

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

/** The names of the themes that come with foldlore. */
export const themeNames: readonly string[] = [...new Set(Object.keys(styles).map(nameOf))]

/**
 * How a theme shows something: its templates were made into functions when the page was built. How it lays pages on paper
 * is not followed here: a look at a lesson is always on whole pages.
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
