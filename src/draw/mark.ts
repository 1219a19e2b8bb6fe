import type { Element } from 'hast'
import { s } from 'hastscript'
import { type Box, boxAround } from './box.ts'
import { colours } from './ink.ts'
import { closedPath, num, type Spot } from './num.ts'

/**
 * One thing drawn, and the room it takes. Marks are drawn in their order, later ones over earlier ones. Their elements
 * are made once the figure's scale is found, which takes many tries.
 */
export interface Mark {
  readonly node: () => Element
  readonly box: Box
}

export interface Stroke {
  readonly class: string
  readonly width: number
  readonly colour?: string
  readonly dash?: readonly number[]
  readonly cap?: 'butt' | 'round' | 'square'
}

const strokeOf = ({ width, colour = colours.ink, dash, cap }: Stroke) => ({
  stroke: colour,
  'stroke-width': num(width),
  ...(dash && { 'stroke-dasharray': dash.map((d) => num(d)).join(' ') }),
  ...(cap && cap !== 'butt' && { 'stroke-linecap': cap }),
})

/** A straight line. */
export const line = (from: Spot, to: Spot, stroke: Stroke): Mark => ({
  node: () =>
    s('line', {
      class: stroke.class,
      x1: num(from[0]),
      y1: num(from[1]),
      x2: num(to[0]),
      y2: num(to[1]),
      ...strokeOf(stroke),
    }),
  box: boxAround([from, to], stroke.width / 2),
})

/** Closed loops filled as one: what lies inside two of them, a window, stays open. */
export function area(
  loops: readonly (readonly Spot[])[],
  options: { class: string; fill?: string; opacity?: number; stroke?: Omit<Stroke, 'class'> },
): Mark {
  const { stroke } = options
  return {
    node: () =>
      s('path', {
        class: options.class,
        d: loops.map(closedPath).join(''),
        ...(options.fill !== undefined && { fill: options.fill }),
        ...(options.opacity !== undefined && { 'fill-opacity': num(options.opacity) }),
        ...(loops.length > 1 && { 'fill-rule': 'evenodd' }),
        ...(stroke && { ...strokeOf({ ...stroke, class: '' }), 'stroke-linejoin': 'round' }),
      }),
    box: boxAround(loops.flat(), stroke ? stroke.width / 2 : 0),
  }
}

/** A slim arrowhead of 2 mm with its tip at `tip`, pointing along `towards` (a vector of length 1). */
export function arrow(tip: Spot, [dx, dy]: Spot, colour: string = colours.ink): Mark {
  const [length, half] = [2, 0.33]
  const foot: Spot = [tip[0] - dx * length, tip[1] - dy * length]
  const spots: Spot[] = [
    tip,
    [foot[0] - dy * half, foot[1] + dx * half],
    [foot[0] + dy * half, foot[1] - dx * half],
  ]
  return {
    node: () => s('path', { class: 'arrow', d: closedPath(spots), fill: colour }),
    box: boxAround(spots),
  }
}

/** A small open ring: where running dimensions start. */
export const ring = ([x, y]: Spot, colour: string = colours.ink): Mark => ({
  node: () =>
    s('circle', {
      class: 'origin',
      cx: num(x),
      cy: num(y),
      r: '0.6',
      fill: colours.paper,
      stroke: colour,
      'stroke-width': '0.18',
    }),
  box: boxAround([[x, y]], 0.7),
})
