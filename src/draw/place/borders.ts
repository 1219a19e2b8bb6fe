import type { Border } from '../../card/card.ts'
import type { Wording } from '../../wording/wording.ts'
import { type Box, boxAround, near } from '../box.ts'
import { across, type Edge, edges } from '../edge.ts'
import { colours } from '../ink.ts'
import { type LabelStyle, label, textWidth } from '../label.ts'
import type { Mark } from '../mark.ts'
import type { Spot } from '../num.ts'

/** What is measured, in mm of the drawing, y downwards. */
export interface Placed {
  /** All that is drawn of the ground: dimensions go outside it. */
  readonly region: Box
  readonly panel: Box
  readonly layer: Box
}

/** Room beside a number for the tail of its dimension line and a little more. */
const tail = 4.5

type Side = keyof Border

/** On which sides of the ground the borders are measured, and which of their numbers stand towards the middle. */
export interface Measured {
  readonly below: boolean
  readonly onLeft: boolean
  readonly inwards: Partial<Record<Side, boolean>>
}

/** Where least lies between, or else where all numbers have room. */
export function measuredAt(border: Border, placed: Placed, wording: Wording, size: number): Measured {
  const { region, panel, layer } = placed
  const below = region.bottom - panel.bottom < panel.top - region.top - 1e-6
  const onLeft = panel.left - region.left < region.right - panel.right - 1e-6
  const widths: Record<Side, number> = {
    left: layer.left - panel.left,
    right: panel.right - layer.right,
    top: layer.top - panel.top,
    bottom: panel.bottom - layer.bottom,
  }
  const need = (side: Side): number => {
    const text = textOf(border, side, wording)
    const room = textWidth(text, size)
    return text === '' || room + 1.5 <= widths[side] ? 0 : room + tail
  }
  const all = [below, !below].flatMap((b) =>
    [onLeft, !onLeft].map((l): Measured => {
      const corner = { level: l ? 'left' : 'right', upright: b ? 'bottom' : 'top' } as const
      return { below: b, onLeft: l, inwards: inwardsOf(placed, need, corner) }
    }),
  )
  const first = all[0] as Measured
  return all.find(({ inwards }) => Object.keys(inwards).length === sides.length) ?? first
}

const sides: readonly Side[] = ['left', 'right', 'top', 'bottom']

const textOf = (border: Border, side: Side, wording: Wording): string =>
  border[side].equals(0) ? '' : wording.length(border[side])

/**
 * Dimensions of the borders that are not zero, outside everything: along the top and up the right, or on the other side
 * where less lies between.
 */
export function borderMarks(
  border: Border,
  placed: Placed,
  { below, onLeft, inwards }: Measured,
  wording: Wording,
  size: number,
): Mark[] {
  const { region, panel, layer } = placed
  const [wide, high] = [region.right - region.left, region.bottom - region.top]
  const moved = (edge: Edge): Edge => ({
    ...edge,
    origin: [edge.origin[0] + region.left, edge.origin[1] + region.top],
  })
  const level = moved(below ? edges.bottom(high) : edges.top())
  const upright = moved(onLeft ? edges.left(high) : edges.right(wide, high))
  const [u, v] = [(x: number) => x - region.left, (y: number) => region.bottom - y]
  const deep = (box: Box) => (below ? region.bottom - box.bottom : box.top - region.top)
  const aside = (box: Box) => (onLeft ? box.left - region.left : region.right - box.right)
  const [inLevel, inUpright] = [
    [deep(panel), deep(layer)],
    [aside(panel), aside(layer)],
  ] as const
  const marks: Record<Side, { edge: Edge; from: number; to: number; inside: readonly [number, number] }> = {
    left: { edge: level, from: u(panel.left), to: u(layer.left), inside: inLevel },
    right: { edge: level, from: u(layer.right), to: u(panel.right), inside: [inLevel[1], inLevel[0]] },
    bottom: { edge: upright, from: v(panel.bottom), to: v(layer.bottom), inside: inUpright },
    top: { edge: upright, from: v(layer.top), to: v(panel.top), inside: [inUpright[1], inUpright[0]] },
  }
  return (Object.keys(marks) as Side[]).flatMap((side) => {
    const towards = inwards[side]
    const text = textOf(border, side, wording)
    if (text === '' || towards === undefined) return []
    const towardsEnd = (side === 'left' || side === 'bottom') === towards
    return across(marks[side].edge, {
      ...marks[side],
      text,
      size,
      row: towards ? 0 : 1,
      beyond: towardsEnd ? 'to' : 'from',
      colour: colours.rust,
      bold: true,
      class: 'measure border',
    })
  })
}

/**
 * Whether each number that is wider than its border stands towards the middle. Two that both point away from it would
 * meet at the `corner` of their edges; one that has no room at all is left to the line of words below.
 */
function inwardsOf(
  { region, panel, layer }: Placed,
  need: (side: Side) => number,
  corner: { readonly level: 'left' | 'right'; readonly upright: 'top' | 'bottom' },
): Partial<Record<Side, boolean>> {
  const fits = (room: number, ...sides: Side[]) => sides.reduce((sum, side) => sum + need(side), 1) <= room
  const [wide, high] = [layer.right - layer.left, layer.bottom - layer.top]
  const [level, upright] = [fits(wide, 'left', 'right'), fits(high, 'top', 'bottom')]
  if (level || upright) return { left: level, right: level, top: upright, bottom: upright }
  const away = { left: false, right: false, top: false, bottom: false }
  // In the middle of a large ground the two lines do not come near its corner.
  const beside = corner.level === 'left' ? panel.left - region.left : region.right - panel.right
  const beyond = corner.upright === 'top' ? panel.top - region.top : region.bottom - panel.bottom
  if (beside > need(corner.level) || beyond > need(corner.upright)) return away
  if (fits(wide, corner.level)) return { ...away, [corner.level]: true }
  if (fits(high, corner.upright)) return { ...away, [corner.upright]: true }
  return { left: false, right: false }
}

/** The word "flush" beside each edge without a border, where there is room for it. */
export function flushMarks(
  border: Border,
  { region, layer }: Placed,
  size: number,
  drawn: readonly Mark[],
  { say }: Wording,
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
    const mark = label(say('figures.flush'), at, style(turned))
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
