import { hatching } from './hatch.ts'
import { area, type Mark, type Stroke } from './mark.ts'
import type { Spot } from './num.ts'
import type { Paint } from './stock.ts'

/** A shape of a stock: its tint, the marks of its hatch, and over both its edge. */
export function painted(
  loops: readonly (readonly Spot[])[],
  { tint, hatch, slant, opacity }: Paint,
  options: { class: string; stroke?: Omit<Stroke, 'class'> },
): Mark[] {
  const { stroke } = options
  const see = opacity === undefined ? {} : { opacity }
  if (!hatch) return [area(loops, { ...options, fill: tint, ...see })]
  return [
    area(loops, { class: options.class, fill: tint, ...see }),
    hatching(loops, hatch, slant),
    ...(stroke ? [area(loops, { class: `${options.class}-edge`, stroke })] : []),
  ]
}
