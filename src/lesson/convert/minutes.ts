import type { TextDirective } from 'mdast-util-directive'
import { report } from '../../card/reading.ts'
import { plainText } from '../plain-text.ts'
import { placeOf, written } from '../source.ts'
import { checkAttributes } from './attributes.ts'
import type { Handler } from './walk.ts'

/** `:minutes[5]` gives the step it stands in its time. */
export const minutes: Handler<TextDirective> = (node, walk, at) => {
  const said = plainText(node).trim()
  checkAttributes(node, [], walk)
  const count = /^\d{1,5}(\.\d+)?$/.test(said) ? Number(said) : 0
  if (count > 0) {
    if (at.addMinutes) at.addMinutes(count)
    else
      report(
        walk,
        'minutes-place',
        placeOf(node.position),
        'These minutes belong to no step',
        'Put them into an item of a numbered list',
        'warning',
      )
    return { type: 'minutes', minutes: count, ...(node.position && { position: node.position }) }
  }
  const number = /\d+/.exec(said)?.[0]
  report(
    walk,
    'minutes',
    placeOf(node.position),
    `Unexpected time \`${said}\`, expected a number of minutes`,
    `Write \`:minutes[${Number(number) > 0 ? Number(number) : 5}]\``,
  )
  return {
    type: 'text',
    value: written(walk.source, node.position),
    ...(node.position && { position: node.position }),
  }
}
