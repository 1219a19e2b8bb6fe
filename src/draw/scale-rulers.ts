import type { Element } from 'hast'
import { s } from 'hastscript'
import type { Unit } from '../length/length.ts'
import type { Wording } from '../wording/wording.ts'
import { colours, font, weights } from './ink.ts'
import { label } from './label.ts'
import { line, type Mark } from './mark.ts'
import { num } from './num.ts'

/** How long the two rulers are, in mm. */
export const rulers = { millimetres: 100, inches: 4 * 25.4 } as const

const size = 2.5
const height = 11

/** Two rulers that prove the scale of a print: 100 mm above, 4 in below. */
export function scaleRulers({ say }: Wording): Element {
  const upper = ruler(0, 20, rulers.millimetres / 20, said(2, 5), 'mm', say('measures.mm'))
  const lower = ruler(6, 16, rulers.inches / 16, said(4, 1 / 4), 'in', say('measures.in'))
  const width = rulers.inches + 8
  return s(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      class: 'rulers',
      width: `${num(width)}mm`,
      height: `${num(height)}mm`,
      viewBox: `-1 0 ${num(width)} ${num(height)}`,
      role: 'img',
      'aria-label': say('figures.rulers'),
      fill: 'none',
      'font-family': font,
    },
    ...[...upper, ...lower].map((mark) => mark.node()),
  )
}

/** The number at each so manyth mark. */
const said =
  (each: number, times: number) =>
  (i: number): string =>
    i % each === 0 ? String(i * times) : ''

function ruler(
  top: number,
  parts: number,
  step: number,
  said: (i: number) => string,
  name: Unit,
  unit: string,
): Mark[] {
  const base = top + 2
  const stroke = { class: `ruler ${name}`, width: weights.hidden, colour: colours.ink }
  return [
    line([0, base], [parts * step, base], stroke),
    ...Array.from({ length: parts + 1 }, (_, i) => {
      const words = said(i)
      const tick = line([i * step, base], [i * step, base - (words === '' ? 1 : 1.8)], stroke)
      const text = i === parts ? `${words} ${unit}` : words
      return words === ''
        ? [tick]
        : [
            tick,
            label(text, [i * step, base + size], {
              class: 'ruler',
              size,
              anchor: i === parts ? 'start' : 'middle',
            }),
          ]
    }).flat(),
  ]
}
