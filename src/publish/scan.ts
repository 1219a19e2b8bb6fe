import type { Element, ElementContent } from 'hast'
import { h } from 'hastscript'
import { visit } from 'unist-util-visit'
import type { FilledLesson } from '../lesson/lesson.ts'
import { linkBytes, longestLink } from '../lesson/link.ts'
import type { Wording } from '../wording/wording.ts'
import { isShort } from './kept.ts'

/** Draws the code of a link, whose text alternative has the given id; undefined when the link is too long for one. */
export type Codes = (link: string, id: string) => Element | undefined

/** Links are printed in letters alone. */
export const noCodes: Codes = () => undefined

/** What draws the codes of a lesson; what makes them is loaded only if it has a link for one. */
export async function codesFor({
  frontMatter,
  tree,
  wording,
}: Pick<FilledLesson, 'frontMatter' | 'tree' | 'wording'>): Promise<Codes> {
  let wanted = frontMatter.video !== undefined
  visit(tree, 'scan', () => {
    wanted = true
  })
  if (!wanted) return noCodes
  const { scanCode } = await import('./scan-code.ts')
  return (link, id) =>
    linkBytes(link) > longestLink
      ? undefined
      : scanCode(link, { id, text: wording.say('handout.code-to-scan', { link }) })
}

/**
 * A link with its code: what there is to see, the address in letters, and the code beside them, which is a link too.
 *
 * @param id unlike that of anything else on the page.
 */
export function scanHast(
  link: string,
  caption: ElementContent[],
  id: string,
  codes: Codes,
  wording: Wording,
): Element {
  const code = codes(link, `${id}-code`)
  const words =
    caption.length > 0 ? caption : [text(wording.say(code ? 'handout.scan-to-open' : 'handout.open'))]
  return h('div', { className: ['scan'], role: 'group', ariaLabelledBy: [`${id}-caption`] }, [
    ...(code ? [h('a', { className: ['scan-picture'], href: link }, code)] : []),
    h('div', { className: ['scan-words'] }, [
      h('p', { className: ['scan-caption'], id: `${id}-caption` }, words),
      h('p', { className: ['scan-link'] }, addressHast(link)),
    ]),
  ])
}

/** The lesson's video, on its first page. */
export function videoHast(link: string, codes: Codes, wording: Wording): Element {
  const words = wording.say(codes(link, 'video-code') ? 'handout.scan-to-watch' : 'handout.watch')
  return scanHast(link, [text(words)], 'video', codes, wording)
}

const text = (value: string): ElementContent => ({ type: 'text', value })

/** An address in letters; a short one stays on one line. */
const addressHast = (link: string): Element =>
  isShort(link) ? h('a', { className: ['kept'], href: link }, link) : h('a', { href: link }, breakable(link))

/** An address that may break behind its slashes and before its other marks, and comes in one piece when it is copied. */
const breakable = (link: string): ElementContent[] =>
  link
    .split(/(?<=[^/]\/)(?=[^/])|(?<=:\/\/)|(?=[?&#])/)
    .flatMap((part, i) => (i > 0 ? [h('wbr'), text(part)] : [text(part)]))
