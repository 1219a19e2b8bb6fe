import { type Length, minus, zero } from '../../length/length.ts'
import type { Box } from '../fit/cutting/boxes.ts'
import { arrange } from './arrange.ts'
import { atMost } from './choice.ts'
import type { Edge, OfferedSheet, TrimmerCut } from './cutting.ts'
import type { Batch } from './exact-uses.ts'
import { usable } from './fits.ts'
import type { Marked } from './marks.ts'
import type { Pattern } from './problem.ts'
import { keyOf, type LaidKind, strokesOf } from './strokes.ts'

/** How so many sheets of a shape are cut. */
export interface Laid {
  readonly shape: number
  readonly times: number
  readonly laid: readonly LaidKind[]
  readonly cuts: readonly TrimmerCut[]
}

/**
 * Lays the pieces of every batch out on its sheet, the largest batch first. Sizes of pieces are settings that are needed
 * in any case; each sheet then keeps to the settings of those before it as far as it can.
 */
export function layOut(
  batches: readonly Batch[],
  patterns: readonly Pattern[],
  { problem, scale, shapes, kinds }: Marked,
): Laid[] {
  const usual = new Set(
    kinds.flatMap(([piece]) => (piece ? [piece.size.width, piece.size.height].map(keyOf) : [])),
  )
  const inMarks = (marks: number): string => keyOf(minus(scale.mark.mul(marks) as Length, scale.gap))
  return batches
    .toSorted((a, b) => b.times - a.times)
    .map(({ shape, counts, times }) => {
      const sheet = shapes[shape]
      const area = problem.shapes[shape]
      if (!sheet || !area) throw new RangeError('A batch of no shape')
      const known = patterns.find(
        (one) => one.shape === shape && counts.every((n, k) => n <= (one.counts[k] ?? 0)),
      )
      const boxes = [
        arrange(area, counts, (marks) => usual.has(inMarks(marks))),
        known && atMost(known.box, counts),
      ]
      const [best] = boxes
        .flatMap((box) => (box ? [onSheet(box, sheet, scale, usual)] : []))
        .sort(
          (a, b) => newSettings(a.cuts, usual) - newSettings(b.cuts, usual) || a.cuts.length - b.cuts.length,
        )
      if (!best) throw new RangeError('A batch that no pattern holds')
      for (const { set } of best.cuts) usual.add(keyOf(set))
      return { shape, times, ...best }
    })
}

/** How many distances the trimmer is set to that it is not set to anyway. */
const newSettings = (cuts: readonly TrimmerCut[], usual: ReadonlySet<string>): number =>
  new Set(cuts.map(({ set }) => keyOf(set)).filter((key) => !usual.has(key))).size

function onSheet(
  box: Box,
  sheet: OfferedSheet,
  scale: Marked['scale'],
  usual: ReadonlySet<string>,
): { laid: LaidKind[]; cuts: TrimmerCut[] } {
  const { trim = {} } = sheet
  const area = { ...usable(sheet), x: trim.left ?? zero, y: trim.bottom ?? zero }
  const { laid, cuts } = strokesOf(box, area, scale, usual)
  return { laid, cuts: [...trimCuts(sheet), ...cuts] }
}

/** The edges come off first. A deckle is no straight edge, so the one across from it is held, or the one just cut. */
function trimCuts({ size, trim = {} }: OfferedSheet): TrimmerCut[] {
  let [left, right, bottom, top] = [zero, size.width, zero, size.height]
  const cuts: TrimmerCut[] = []
  const cut = (edge: Edge, by: Length | undefined): void => {
    if (!by?.gt(0)) return
    if (edge === 'left' || edge === 'right') {
      if (edge === 'left') left = by
      else right = minus(right, by)
      const against = edge === 'left' ? 'right' : 'left'
      cuts.push({
        across: 'width',
        at: edge === 'left' ? left : right,
        from: bottom,
        to: top,
        against,
        set: minus(right, left),
      })
    } else {
      if (edge === 'bottom') bottom = by
      else top = minus(top, by)
      const against = edge === 'bottom' ? 'top' : 'bottom'
      cuts.push({
        across: 'height',
        at: edge === 'bottom' ? bottom : top,
        from: left,
        to: right,
        against,
        set: minus(top, bottom),
      })
    }
  }
  for (const edge of ['left', 'right', 'bottom', 'top'] as const) cut(edge, trim[edge])
  return cuts
}
