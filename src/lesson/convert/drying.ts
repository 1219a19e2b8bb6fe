import type { TextDirective } from 'mdast-util-directive'
import { report } from '../../card/reading.ts'
import { minutesIn } from '../minutes-in.ts'
import { plainText } from '../plain-text.ts'
import { placeOf, written } from '../source.ts'
import { checkAttributes } from './attributes.ts'
import type { Handler } from './walk.ts'

/** `:drying[20 min]`: what the step around it leaves must lie so long before it is used again. */
export const drying: Handler<TextDirective> = (node, walk, at) => {
  const said = plainText(node).trim()
  const place = placeOf(node.position)
  const position = node.position && { position: node.position }
  checkAttributes(node, [], walk)
  const minutes = minutesIn(said) ?? 0
  if (minutes <= 0) {
    report(
      walk,
      'drying',
      place,
      `Unexpected time \`${said}\`, expected how long it dries`,
      'Write `:drying[20 min]`',
    )
    return { type: 'text', value: written(walk.source, node.position), ...position }
  }
  if (at.addDrying) at.addDrying(minutes)
  else
    report(
      walk,
      'minutes-place',
      place,
      'This drying belongs to no step',
      'Put it into an item of a numbered list',
      'warning',
    )
  return { type: 'drying', minutes, ...position }
}
