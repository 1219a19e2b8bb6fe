import type { BlockContent, DefinitionContent, Nodes } from 'mdast'
import type { ContainerDirective } from 'mdast-util-directive'
import { report } from '../../card/reading.ts'
import type { CalloutKind } from '../nodes.ts'
import { readAbout } from '../safety/about.ts'
import { placeOf } from '../source.ts'
import { attributePlace, checkAttributes, valuePlace } from './attributes.ts'
import type { Handler, Walk } from './walk.ts'

/**
 * `:::tip` and the others. Its title, if it has one (`:::tip[Title]`), stays its first child, a paragraph with
 * `data.directiveLabel`. A caution may say what it is about (`:::caution{about=blades}`). One that is never closed is
 * taken to end behind its first block: what comes below is no less of a lesson for a line that was forgotten.
 */
export const callout: Handler<ContainerDirective> = (node, walk, at, descend) => {
  const about = aboutOf(node, walk)
  const place = node.data?.position
  const own = place?.closing ? node.children.length : 1 + (hasTitle(node) ? 1 : 0)
  if (!place?.closing) {
    walk.toldOpen++
    report(
      walk,
      'open-callout',
      placeOf(place?.opening ?? node.position),
      `\`:::${node.name}\` is never closed`,
      at.callout
        ? 'Add a line `:::` below its last line, and give the call-out around it one colon more, such as `::::tip`'
        : 'Add a line `:::` below its last line',
    )
  }
  const made = {
    type: 'callout' as const,
    kind: node.name as CalloutKind,
    ...(about.length > 0 && { about }),
    children: node.children.slice(0, own) as BlockContent[],
    ...(node.position && { position: node.position }),
  }
  // Minutes in a call-out are not those of the step around it.
  descend(made, { ...at, top: false, callout: true, addMinutes: () => {}, addDrying: () => {} })
  return own === node.children.length ? made : [made, ...after(node.children.slice(own), descend, at)]
}

/** What a caution says that it is about. */
function aboutOf(node: ContainerDirective, walk: Walk): readonly string[] {
  checkAttributes(node, node.name === 'caution' ? ['about'] : [], walk)
  const written = node.name === 'caution' ? node.attributes?.about : undefined
  if (written === undefined || written === null) return []
  const { topics, unknown } = readAbout(written)
  if (unknown)
    report(
      walk,
      'unknown-hazard',
      written === '' ? attributePlace(node, 'about') : valuePlace(node, 'about', walk),
      unknown.word === ''
        ? 'This caution does not say what it is about'
        : `Unexpected hazard \`${unknown.word}\``,
      unknown.suggestion,
    )
  return topics
}

const hasTitle = (node: ContainerDirective): boolean => {
  const [first] = node.children
  return first?.type === 'paragraph' && first.data !== undefined && 'directiveLabel' in first.data
}

function after(
  children: (BlockContent | DefinitionContent)[],
  descend: Parameters<Handler>[3],
  at: Parameters<Handler>[2],
): Nodes[] {
  const rest = { type: 'root' as const, children }
  descend(rest, at)
  return rest.children
}
