import { type Length, larger, minus, plus, same, shorter, smaller } from '../../../length/length.ts'
import { type Along, acrossOf } from './written.ts'

/** An upright rectangle on a sheet. */
export interface Box {
  readonly left: Length
  readonly right: Length
  readonly bottom: Length
  readonly top: Length
}

/** A stretch of one direction. */
export interface Stretch {
  readonly from: Length
  readonly to: Length
}

export const stretchOf = (box: Box, direction: Along): Stretch =>
  direction === 'width' ? { from: box.left, to: box.right } : { from: box.bottom, to: box.top }

export const lengthOf = ({ from, to }: Stretch): Length => minus(to, from)

/** A rectangle from its stretch along a strip, and the one across it. */
export const boxOf = (along: Along, own: Stretch, across: Stretch): Box => {
  const [x, y] = along === 'width' ? [own, across] : [across, own]
  return { left: x.from, right: x.to, bottom: y.from, top: y.to }
}

export const movedBox = (box: Box, along: Along, by: Length, across: Length): Box => {
  const shift = ({ from, to }: Stretch, length: Length) => ({
    from: plus(from, length),
    to: plus(to, length),
  })
  return boxOf(along, shift(stretchOf(box, along), by), shift(stretchOf(box, acrossOf(along)), across))
}

/** The smallest rectangle round all of them. */
export const round = (boxes: readonly Box[]): Box =>
  boxes.reduce((a, b) => ({
    left: smaller(a.left, b.left),
    right: larger(a.right, b.right),
    bottom: smaller(a.bottom, b.bottom),
    top: larger(a.top, b.top),
  }))

export const overlap = (a: Box, b: Box): boolean =>
  shorter(a.left, b.right) && shorter(b.left, a.right) && shorter(a.bottom, b.top) && shorter(b.bottom, a.top)

export const meets = (a: Stretch, b: Stretch): boolean => same(a.from, b.from) || same(a.to, b.to)
