import type { LeafDirective } from 'mdast-util-directive'
import { report } from '../../card/reading.ts'
import { checkLinkLength, isLink } from '../link.ts'
import { placeOf } from '../source.ts'
import { attributePlace, checkAttributes, valuePlace } from './attributes.ts'
import type { Handler } from './walk.ts'

/** `::scan[Watch the fold]{link=https://…}` is printed as a code that opens a link. Without one, its caption stays. */
export const scan: Handler<LeafDirective> = (node, walk, at, descend) => {
  descend(node, { ...at, top: false })
  checkAttributes(node, ['link'], walk)
  const written = node.attributes?.link
  const link = written?.trim() ?? ''
  const position = node.position && { position: node.position }
  if (isLink(link)) {
    checkLinkLength(walk, link, valuePlace(node, 'link', walk))
    return { type: 'scan', link, children: node.children, ...position }
  }
  if (link === '')
    report(
      walk,
      'missing-attribute',
      typeof written === 'string' ? attributePlace(node, 'link') : placeOf(node.position),
      'This does not say which link the code opens',
      `Write \`${scanExample}\`, with the whole address`,
    )
  else
    report(
      walk,
      'value',
      valuePlace(node, 'link', walk),
      `\`${link}\` is not a link`,
      'Write the whole address, with `https://`',
    )
  return node.children.length > 0 ? { type: 'paragraph', children: node.children, ...position } : []
}

/** How a code to scan is written: the quotation marks let the address have `=` and spaces of its own. */
export const scanExample = '::scan[Watch the fold]{link="https://example.org/fold"}'
