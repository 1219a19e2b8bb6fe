import { type Box, boxAround, cornersOf, lineNear, near } from './box.ts'
import { colours } from './ink.ts'
import { capHeight, type LabelStyle, label, labelBox } from './label.ts'
import { area, type Mark } from './mark.ts'
import type { Spot } from './num.ts'

/** What a name must keep clear of. */
export interface Taken {
  readonly boxes: readonly Box[]
  readonly lines: readonly (readonly [Spot, Spot])[]
}

/** How far above or below the middle a name may stand, in shares of the room. */
export const heights = [0, -0.3, 0.3, -0.4, 0.4]

/** Clear room round a name, in mm. */
const clear = 0.9

/**
 * The lines of a name in the middle of a room, level or reading upwards, wherever they fit; nothing when they do not.
 *
 * @param ground colour laid under the name where the room has a pattern.
 */
export function nameIn(
  room: Box,
  lines: readonly string[],
  size: number,
  taken: Taken,
  options: { ground?: string; colour?: string } = {},
  shares: readonly number[] = heights,
): Mark[] {
  const pitch = size * 1.25
  const middle: Spot = [(room.left + room.right) / 2, (room.top + room.bottom) / 2]
  const style = (turned: boolean): LabelStyle => ({
    class: 'name',
    size,
    anchor: 'middle',
    turned,
    colour: options.colour ?? colours.slate,
  })
  const deep = (lines.length - 1) * pitch + capHeight * size
  for (const turned of [false, true])
    for (const share of shares) {
      const shift = (room.bottom - room.top) * share
      const [x, y] = [middle[0], middle[1] + shift]
      const at = lines.map((_, i): Spot => {
        const down = i * pitch - deep / 2 + capHeight * size
        return turned ? [x + down, y] : [x, y + down]
      })
      const texts = lines.map((text, i) => labelBox(text, at[i] as Spot, style(turned)))
      const whole = boxAround(
        texts.flatMap((b): Spot[] => [
          [b.left, b.top],
          [b.right, b.bottom],
        ]),
        clear,
      )
      if (
        whole.top < room.top ||
        whole.bottom > room.bottom ||
        whole.left < room.left ||
        whole.right > room.right
      )
        continue
      if (taken.boxes.some((b) => near(whole, b)) || taken.lines.some(([a, b]) => lineNear(whole, a, b)))
        continue
      return [
        ...(options.ground ? [area([cornersOf(whole)], { class: 'ground', fill: options.ground })] : []),
        ...lines.map((text, i) => label(text, at[i] as Spot, style(turned))),
      ]
    }
  return []
}
