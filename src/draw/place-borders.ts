import type { Border } from '../card/card.ts'
import { formatLength } from '../length/format.ts'
import type { Unit } from '../length/length.ts'
import { type Box, boxAround, near } from './box.ts'
import { across, type Edge, edges } from './edge.ts'
import { colours } from './ink.ts'
import { type LabelStyle, label, textWidth } from './label.ts'
import type { Mark } from './mark.ts'
import type { Spot } from './num.ts'

/** What is measured, in mm of the drawing, y downwards. */
export interface Placed {
  /** All that is drawn of the ground: dimensions go outside it. */
  readonly region: Box
  readonly panel: Box
  readonly layer: Box
}

/** Room beside a number for the tail of its dimension line and a little more. */
const tail = 4.5

/**
 * Dimensions of the borders that are not zero, outside everything: along the top and up the right, or on the other side
 * where less lies between.
 */
export function borderMarks(
  border: Border,
  { region, panel, layer }: Placed,
  unit: Unit,
  size: number,
): Mark[] {
  const text = (side: keyof Border) => (border[side].equals(0) ? '' : formatLength(border[side], unit))
  const need = (...sides: (keyof Border)[]) =>
    sides.reduce((sum, side) => sum + (border[side].equals(0) ? 0 : textWidth(text(side), size) + tail), 0)
  const [wide, high] = [region.right - region.left, region.bottom - region.top]
  const below = region.bottom - panel.bottom < panel.top - region.top - 1e-6
  const onLeft = panel.left - region.left < region.right - panel.right - 1e-6
  const moved = (edge: Edge): Edge => ({
    ...edge,
    origin: [edge.origin[0] + region.left, edge.origin[1] + region.top],
  })
  const level = moved(below ? edges.bottom(high) : edges.top())
  const upright = moved(onLeft ? edges.left(high) : edges.right(wide, high))
  // Numbers stand towards the middle where there is room; else the ones along the top step out of the corner's way.
  const inLevel = layer.right - layer.left >= need('left', 'right') + tail
  const inUpright = layer.bottom - layer.top >= need('top', 'bottom') + tail
  const [u, v] = [(x: number) => x - region.left, (y: number) => region.bottom - y]
  const deep = (box: Box) => (below ? region.bottom - box.bottom : box.top - region.top)
  const aside = (box: Box) => (onLeft ? box.left - region.left : region.right - box.right)
  const one = (side: keyof Border, from: number, to: number, first: Box, inwards: boolean): Mark[] => {
    const upwards = side === 'top' || side === 'bottom'
    const towardsEnd = (side === 'left' || side === 'bottom') === inwards
    const [near, far] = upwards ? [aside(panel), aside(layer)] : [deep(panel), deep(layer)]
    return text(side) === ''
      ? []
      : across(upwards ? upright : level, {
          from,
          to,
          text: text(side),
          size,
          row: inwards ? 0 : 1,
          beyond: towardsEnd ? 'to' : 'from',
          inside: first === panel ? [near, far] : [far, near],
          colour: colours.rust,
          bold: true,
          class: 'measure border',
        })
  }
  return [
    ...one('left', u(panel.left), u(layer.left), panel, inLevel),
    ...one('right', u(layer.right), u(panel.right), layer, inLevel),
    // On a panel too small for both, the line of words below says these.
    ...(inLevel || inUpright ? one('bottom', v(panel.bottom), v(layer.bottom), panel, inUpright) : []),
    ...(inLevel || inUpright ? one('top', v(layer.top), v(panel.top), layer, inUpright) : []),
  ]
}

/** The word "flush" beside each edge without a border, where there is room for it. */
export function flushMarks(
  border: Border,
  { region, layer }: Placed,
  size: number,
  drawn: readonly Mark[],
): Mark[] {
  const style = (turned: boolean): LabelStyle => ({
    class: 'flush',
    size,
    anchor: 'middle',
    turned,
    colour: colours.slate,
  })
  const [x, y] = [(layer.left + layer.right) / 2, (layer.top + layer.bottom) / 2]
  const spots: Record<keyof Border, [Spot, boolean]> = {
    top: [[x, region.top - 1.3], false],
    bottom: [[x, region.bottom + 1.3 + size * 0.74], false],
    left: [[region.left - 1.3, y], true],
    right: [[region.right + 1.3 + size * 0.74, y], true],
  }
  const touching: Record<keyof Border, boolean> = {
    top: layer.top - region.top < 1,
    bottom: region.bottom - layer.bottom < 1,
    left: layer.left - region.left < 1,
    right: region.right - layer.right < 1,
  }
  return (Object.keys(spots) as (keyof Border)[]).flatMap((edge) => {
    if (!border[edge].equals(0) || !touching[edge]) return []
    const [at, turned] = spots[edge]
    const mark = label('flush', at, style(turned))
    const room = boxAround(
      [
        [mark.box.left, mark.box.top],
        [mark.box.right, mark.box.bottom],
      ],
      0.8,
    )
    return drawn.some((d) => near(room, d.box)) ? [] : [mark]
  })
}
