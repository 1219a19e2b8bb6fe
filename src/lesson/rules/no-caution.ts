import type { ListItem, Nodes } from 'mdast'
import { within } from '../../card/at.ts'
import type { Finding, Place } from '../../length/finding.ts'
import { placeOf } from '../source.ts'
import { type Hazard, hazards } from './hazards.ts'
import type { Rule } from './rule.ts'

/** A tool that can hurt is named in the supplies or in a step, and the lesson has no `:::caution`. */
export const noCaution: Rule = {
  docs: [
    {
      name: 'no-caution',
      about: 'A tool that can hurt is used, and there is no caution.',
      example: '1. Cut the base to {base.size} with a craft knife.',
    },
  ],
  find: ({ filled: { tree, supplies } }) => {
    if (hasCaution(tree)) return []
    const { each, shared, tutor } = supplies
    const said = [
      ...[...each, ...shared, ...tutor].map(({ item, place }) => ({ text: item, place })),
      ...tree.children
        .flatMap((node) => (node.type === 'list' ? node.children.filter(isStep) : []))
        .flatMap(textsIn),
    ]
    return hazards.flatMap((hazard) => {
      for (const { text, place } of said) {
        const found = hazard.tool.exec(text)
        if (found) return [finding(hazard, found[0], partOf(place, text, found))]
      }
      return []
    })
  },
}

const finding = ({ caution }: Hazard, tool: string, place: Place): Finding => ({
  rule: 'no-caution',
  severity: 'warning',
  message: `The lesson uses a tool that can hurt, \`${tool}\`, and has no caution`,
  suggestion: `Add a \`:::caution\` before its first use: ${caution}`,
  place,
})

const isStep = (item: ListItem): boolean => item.data?.step !== undefined

const hasCaution = (node: Nodes): boolean =>
  (node.type === 'callout' && node.kind === 'caution') ||
  ('children' in node && node.children.some(hasCaution))

function textsIn(node: Nodes): { text: string; place: Place }[] {
  if (node.type === 'text') return [{ text: node.value, place: placeOf(node.position) }]
  return 'children' in node ? node.children.flatMap(textsIn) : []
}

/** The words within their text, if that stands in the file as it is, and on one line. */
function partOf(place: Place, text: string, { index, 0: words }: RegExpExecArray): Place {
  const same =
    place.offset !== undefined && place.end !== undefined && place.end - place.offset === text.length
  return same && !/[\r\n]/.test(text.slice(0, index)) ? within(place, index, index + words.length) : place
}
