import type { Element, ElementContent } from 'hast'
import { toHtml } from 'hast-util-to-html'
import { h } from 'hastscript'
import { handoutHtml } from '../html.ts'
import { loadTheme } from '../theme.ts'
import { libraryCss } from './library-css.ts'

/** A page of a library that stands alone. */
export async function libraryPage(
  title: string,
  lang: string,
  content: readonly (Element | ElementContent)[],
  script?: string,
): Promise<string> {
  const { css } = await loadTheme('step-sheet')
  const body = toHtml(h('main', { className: ['library'] }, ...content), { allowDangerousHtml: true })
  const head = { title, lang, foot: { title, print: '' } }
  return handoutHtml(
    head,
    { css: `${css}\n${libraryCss}`, body: () => body },
    { paper: 'a4', ...(script !== undefined && { script }) },
  )
}

/** A figure of ours, as it is. */
export const figureOf = (svg: string, className: string): Element => ({
  type: 'element',
  tagName: 'div',
  properties: { className: [className] },
  children: [{ type: 'raw', value: svg } as unknown as ElementContent],
})

/** Words with backticks, as `check` tells them. */
export function codedText(text: string): ElementContent[] {
  return text
    .split(/(`[^`]+`)/)
    .filter((part) => part !== '')
    .map((part) =>
      part.startsWith('`') && part.length > 2 ? h('code', part.slice(1, -1)) : { type: 'text', value: part },
    )
}
