import type { Box } from '../fit/cutting/boxes.ts'
import { joined } from './choice.ts'
import type { Along } from './cutting.ts'

/** Boxes in a row: beside each other along the width, or above each other along the height. */
export interface Row {
  readonly along: Along
  readonly boxes: readonly Box[]
}

/** What a box of parts is a row of: rows within rows the same way are one. A piece is a row of itself. */
export function rowOf(box: Box): Row {
  const { made } = box
  if (made.of === 'piece') return { along: 'width', boxes: [box] }
  const flat = (part: Box): Box[] =>
    part.made.of === 'parts' && part.made.lies === made.lies
      ? [...flat(part.made.first), ...flat(part.made.second)]
      : [part]
  return { along: made.lies === 'beside' ? 'width' : 'height', boxes: flat(box) }
}

/** Boxes put in a row; undefined when there are none. */
export const inRow = (boxes: readonly Box[], along: Along): Box | undefined =>
  boxes.reduce<Box | undefined>(
    (row, box) => (row ? joined(row, box, along === 'width' ? 'beside' : 'above') : box),
    undefined,
  )

/**
 * Whether a row is trimmed across before it is parted: when one of its pieces is as high as the row, one cut does for
 * all. Where only rows the other way are, each of their pieces is cut to its size anyway.
 */
export function isTrimmed(box: Box): boolean {
  const { along, boxes } = rowOf(box)
  const across = along === 'width' ? 'height' : 'width'
  return boxes.some((one) => one.made.of === 'piece' && one[across] === box[across])
}
