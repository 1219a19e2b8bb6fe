import type { Element, ElementContent } from 'hast'
import { h } from 'hastscript'
import { visit } from 'unist-util-visit'
import type { FilledLesson } from '../lesson/lesson.ts'
import { linkBytes, longestLink } from '../lesson/link.ts'

/** Draws the code of a link, whose text alternative has the given id; undefined when the link is too long for one. */
export type Codes = (link: string, id: string) => Element | undefined

/** Links are printed in letters alone. */
export const noCodes: Codes = () => undefined

/** What draws the codes of a lesson; what makes them is loaded only if it has a link for one. */
export async function codesFor({
  frontMatter,
  tree,
}: Pick<FilledLesson, 'frontMatter' | 'tree'>): Promise<Codes> {
  let wanted = frontMatter.video !== undefined
  visit(tree, 'scan', () => {
    wanted = true
  })
  if (!wanted) return noCodes
  const { scanCode } = await import('./scan-code.ts')
  return (link, id) => (linkBytes(link) > longestLink ? undefined : scanCode(link, id))
}

/**
 * A link with its code: what there is to see, the address in letters, and the code beside them, which is a link too.
 *
 * @param id unlike that of anything else on the page.
 */
export function scanHast(link: string, caption: ElementContent[], id: string, codes: Codes): Element {
  const code = codes(link, `${id}-code`)
  const words = caption.length > 0 ? caption : [text(code ? 'Scan to open' : 'Open')]
  return h('div', { className: ['scan'], role: 'group', ariaLabelledBy: [`${id}-caption`] }, [
    ...(code ? [h('a', { className: ['scan-picture'], href: link }, code)] : []),
    h('div', { className: ['scan-words'] }, [
      h('p', { className: ['scan-caption'], id: `${id}-caption` }, words),
      h('p', { className: ['scan-link'] }, h('a', { href: link }, breakable(link))),
    ]),
  ])
}

/** The lesson's video, on its first page. */
export function videoHast(link: string, codes: Codes): Element {
  const words = codes(link, 'video-code') ? 'Scan to watch it being made' : 'Watch it being made'
  return scanHast(link, [text(words)], 'video', codes)
}

const text = (value: string): ElementContent => ({ type: 'text', value })

/** An address that may break behind its slashes and before its other marks, and comes in one piece when it is copied. */
const breakable = (link: string): ElementContent[] =>
  link
    .split(/(?<=[^/]\/)(?=[^/])|(?<=:\/\/)|(?=[?&#])/)
    .flatMap((part, i) => (i > 0 ? [h('wbr'), text(part)] : [text(part)]))
