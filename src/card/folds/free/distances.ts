import { type Length, minus, plus, zero } from '../../../length/length.ts'
import { lengthCell, type Reading, report } from '../../reading.ts'
import type { Cell } from '../../scope.ts'
import type { Fields } from '../../yaml.ts'
import type { Box } from './box.ts'

export type Edge = 'left' | 'right' | 'top' | 'bottom'
export const edges = ['left', 'right', 'bottom', 'top'] as const satisfies readonly Edge[]

/** How far something is from an edge of the panel that it is put on, as the sheet lies with its inside up. */
export interface Distance {
  readonly edge: Edge
  readonly length: Cell<Length>
}

/**
 * Reads the distances from the edges of a panel: at most one sideways and one upwards.
 *
 * @param name what the lengths are called.
 */
export function distancesIn(reading: Reading, fields: Fields, name: string): { x?: Distance; y?: Distance } {
  const read = (edge: Edge): Distance[] => {
    const field = fields.get(edge)
    return field ? [{ edge, length: lengthCell(reading, `${name}.${edge}`, field.value, '0', 'down') }] : []
  }
  const one = (pair: readonly [Edge, Edge]): Distance | undefined => {
    const [first, second] = pair.flatMap(read)
    const over = second && fields.get(second.edge)
    if (over)
      report(
        reading,
        'value',
        over.keyPlace,
        `\`${pair[0]}\` and \`${pair[1]}\` both say where it is`,
        `Take one of the two out`,
      )
    return first
  }
  const [x, y] = [one(['left', 'right']), one(['bottom', 'top'])]
  return { ...(x && { x }), ...(y && { y }) }
}

/** Where the near end of something `long` comes to lie on a panel. */
export function startAt({ edge, length }: Distance, { left, right, bottom, top }: Box, long: Length): Length {
  if (edge === 'left' || edge === 'bottom') return plus(edge === 'left' ? left : bottom, length())
  return minus(edge === 'right' ? right : top, length(), long)
}

export const level: Cell<Length> = () => zero
