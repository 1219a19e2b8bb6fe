import { colours } from './ink.ts'
import { label } from './label.ts'
import { area, arrow, line, type Mark } from './mark.ts'
import type { Spot } from './num.ts'
import type { Paint } from './stock.ts'

/** The small mark of a pattern with a top: an arrow and the word, its foot at `at`. */
export function upMark([x, y]: Spot, size: number, paint: Paint): Mark[] {
  const high = Math.max(4, size * 1.3)
  const text = label('up', [x + 1.1, y - size * 0.35], { class: 'name', size, colour: colours.slate })
  const ground: Spot[] = [
    [x - 0.9, y - high - 0.5],
    [text.box.right + 0.6, y - high - 0.5],
    [text.box.right + 0.6, y + 0.6],
    [x - 0.9, y + 0.6],
  ]
  return [
    area([ground], { class: 'ground', fill: paint.tint }),
    line([x, y], [x, y - high + 1.5], { class: 'up', width: 0.35, colour: colours.slate }),
    arrow([x, y - high], [0, -1], colours.slate),
    text,
  ]
}
