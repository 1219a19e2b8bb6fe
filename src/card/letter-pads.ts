import { type Length, minus, plus, zero } from '../length/length.ts'
import { point, rectangle } from './strip.ts'
import type { Pad } from './structure.ts'
import type { Target } from './targets.ts'

/** Letters of one lettering, and how thick each is with its foam. */
export interface Letters {
  readonly name: string
  readonly marks: readonly Length[]
  readonly widths: readonly Length[]
  readonly height: Length
}

/**
 * The letters as they lie in the thickness of the card on every strip that they are on. Each counts as high as the
 * strip, since how high it is cut is not said.
 *
 * @param upsideDown plates whose outside is read head over heels: their left end stays on the left.
 */
export function padsOn(
  strips: readonly Target[],
  { name, marks, widths, height }: Letters,
  upsideDown: readonly string[] = [],
): Pad[] {
  return strips.flatMap(({ plate, left, bottom, size, side }) =>
    marks.map((mark, i): Pad => {
      const width = widths[i] ?? zero
      const isMirrored = side === 'back' && !upsideDown.includes(plate)
      const x = isMirrored ? minus(plus(left, size.width), mark, width) : plus(left, mark)
      const outline = rectangle({ width, height: size.height }, point(x, bottom))
      return { name, onto: plate, side, outline, height }
    }),
  )
}
