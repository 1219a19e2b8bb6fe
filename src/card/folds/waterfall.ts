import { fitInside } from '../../length/grid.ts'
import { minus, part, plus, times, zero } from '../../length/length.ts'
import { glued } from '../making/glue.ts'
import { barLength, turnOf, type WaterfallKey, waterfallLimits } from '../making/waterfall-limits.ts'
import { point, sheet, strip } from '../strip.ts'
import type { FoldStyle, Panels } from '../style.ts'
import { side } from './side.ts'

const panelsOf = (n: number): Panels => ({
  front: 'back',
  back: 'face',
  ...Object.fromEntries(numbers(n).map((k) => [`panel ${k}`, 'face' as const])),
})

const numbers = (n: number): number[] => Array.from({ length: n }, (_, i) => i + 1)

/**
 * A side fold, front W · V · back W, with a pull strip on the front: from its lower end upwards n bands of one step, M
 * between them, then M and the tab. Only the last crease is folded while the card is shut: the tab hangs down behind the
 * bands, its end at the lower edge of the card. A bar lies over the tab, one step below the turn of the strip, and is
 * glued to the card at both ends, outside the strip. No part of the strip is glued to the card or the bar.
 *
 * A square panel p is stuck on each band by a stretch as wide as the band, at its top edge, and hangs down over the ones
 * below: panel 1, on the band at the turn, lies in front. The cascade is p + (n - 1)·step high, below it the tab shows by
 * the grip, and the turn is at the sum of these above the lower edge of the card. The panels are in the middle of the
 * front; what does not halve on the ruler is beside the spine.
 *
 * Pulled by one step, the tab draws a band up over the bar and down behind it. The panel on it turns over upwards and
 * follows down between the ends of the bar, and the next panel hangs where it has hung. Panel n hangs there after n - 1
 * steps: that is the travel, and by so much the tab is out below the card in the end.
 */
export const waterfall: FoldStyle<WaterfallKey, 'panels'> = {
  name: 'waterfall',
  summary: 'Panels on the front that turn over one after the other when a tab is pulled, by one step each.',
  remainder: 'the side of the spine, beside the panels',
  parameters: {
    panel: { help: 'side of the square panels', usual: 'closed.height / 2 - 3/4 in', round: 'down' },
    step: { help: 'how far each panel shows below the one above it', usual: '3/4 in', round: 'nearest' },
    grip: { help: 'how far the tab shows below the panels', usual: '1/2 in', round: 'up' },
    glue: { help: 'what is stuck down at either end of the bar', usual: '1/2 in', round: 'up' },
    gap: { help: 'play of the strip beside what is stuck down', usual: '1/16 in', round: 'up' },
  },
  counts: { panels: { help: 'how many panels', usual: 4, least: 2, most: 8 } },
  panels: panelsOf(4),
  panelsFor: ({ counts }) => panelsOf(counts.panels),
  pieces: ['strip', 'panel', 'bar'],
  limits: waterfallLimits,
  build(input) {
    const { closed, lengths, counts, stock, grid } = input
    const { panel, step, glue, gap } = lengths
    const n = counts.panels
    const turn = turnOf(input)
    const left = fitInside(part(minus(closed.width, panel), 2), grid)
    const base = side.build({ ...input, lengths: {}, counts: {}, choices: { spine: 'left' } })
    const bands = numbers(n).toReversed()
    const pull = strip({
      piece: 'strip',
      stock,
      panels: [...bands.map((k) => ({ name: `band ${k}`, length: step })), { name: 'tab', length: turn }],
      folds: bands.map(() => 'mountain'),
      across: panel,
      along: 'height',
    })
    const square = sheet('panel', stock, { width: panel, height: panel })
    const bar = sheet('bar', stock, { width: barLength(lengths), height: step })
    return {
      ...base,
      pieces: [...base.pieces, ...pull.pieces, { ...square.piece, count: n }, bar.piece],
      plates: [
        ...base.plates,
        ...pull.plates,
        ...numbers(n).map((k) => ({ ...square.plate, name: `panel ${k}` })),
        bar.plate,
      ],
      hinges: [...base.hinges, ...pull.hinges],
      bonds: [
        ...numbers(n).map((k) =>
          glued(`panel ${k}`, `band ${k}`, point(zero, minus(times(step, n - k + 1), panel))),
        ),
        glued('tab', 'front', point(plus(left, panel), plus(turn, times(step, n))), {
          side: 'back',
          turn: 180,
          slide: point(zero, times(step, 1 - n)),
        }),
        glued('bar', 'front', point(plus(left, panel, glue, gap), minus(turn, step)), {
          side: 'back',
          over: true,
        }),
      ],
      shut: pull.hinges.map(({ between }) => ({
        hinge: between,
        degrees: between.includes('tab') ? 180 : 0,
      })),
    }
  },
  starter: `fold: waterfall
closed: 4 1/4 x 5 1/2 in
panels: 4
base: {stock: white card, weight: 300 gsm}
layers:
  picture:
    on: [panel 1, panel 2, panel 3, panel 4]
    border: 1/8 in
    stock: patterned paper`,
}
