import type { Card } from '../../card/card.ts'
import type { Closed } from '../../fold/pose.ts'
import { nearest } from '../../length/grid.ts'
import { mm } from '../../length/length.ts'
import { toMm } from '../plane.ts'
import { type Cut, cutAt } from './section.ts'

/** Where a shut card is cut: the cut, and whether it would look the same anywhere. */
export interface ChosenCut {
  readonly cut: Cut
  readonly same: boolean
}

/** A strip of the card all over which a cut shows the same. */
interface Band {
  readonly along: Cut['along']
  readonly low: number
  readonly high: number
  readonly key: string
  readonly bends: number
  readonly score: readonly number[]
}

/**
 * Chooses where to cut: across folds, through what is asked for, then through most layers and across most bends, then
 * where they are thickest; along the width rather than the height, and as near to the middle as can be.
 *
 * @param plates that the cut should go through; all are alike if there are none.
 */
export function chooseCut({ structure, grid }: Card, closed: Closed, plates: readonly string[]): ChosenCut {
  const bands = (['width', 'height'] as const).flatMap((along) => {
    const own = bandsOf(structure, closed, along, plates)
    // A cut that no crease of the card crosses is a cut along the folds.
    const folds = own.some(({ bends }) => bends > 0) ? 1 : 0
    return own.map((band) => ({ ...band, score: [folds, ...band.score] }))
  })
  const best = bands.reduce((a, b) => (compare(b.score, a.score) > 0 ? b : a))
  const middle = toMm(best.along === 'width' ? closed.size.height : closed.size.width) / 2
  const at = middle > best.low && middle < best.high ? middle : markIn(best, grid)
  return {
    cut: cutAt(structure, closed, best.along, at),
    same: bands.every(({ along, key }) => along !== best.along || key === best.key),
  }
}

function bandsOf(
  structure: Card['structure'],
  closed: Closed,
  along: Cut['along'],
  plates: readonly string[],
): Band[] {
  const axis = along === 'width' ? 1 : 0
  const ends = distinct(closed.map.flatMap(({ outline }) => outline.map((corner) => corner[axis])))
  const whole = ends.at(-1) ?? 0
  const bands: Band[] = []
  for (const [i, high] of ends.entries()) {
    const low = ends[i - 1]
    if (low === undefined) continue
    const cut = cutAt(structure, closed, along, (low + high) / 2)
    const key = `${platesOf(cut).sort().join()} ${cut.pads.length} ${cut.crossings.length}`
    const last = bands.at(-1)
    const from = last?.key === key ? last.low : low
    const middle = Math.max(from - whole / 2, whole / 2 - high, 0)
    const band = { along, low: from, high, key, bends: bendsIn(cut), score: [...score(cut, plates), -middle] }
    if (last?.key === key) bands[bands.length - 1] = band
    else bands.push(band)
  }
  return bands
}

const platesOf = ({ bars }: Cut): string[] => [...new Set(bars.map(({ plate }) => plate))]
const bendsIn = ({ crossings }: Cut): number => crossings.filter(({ folded }) => folded).length

/** What makes one cut better than another, from what counts most. */
function score(cut: Cut, wanted: readonly string[]): number[] {
  const plates = platesOf(cut)
  const pads = new Set(cut.pads.map(({ pad }) => pad.name)).size
  return [
    wanted.filter((plate) => plates.includes(plate)).length,
    plates.length + pads + bendsIn(cut) / 2,
    Math.max(...cut.columns.map(({ thickness }) => thickness), 0),
    cut.along === 'width' ? 1 : 0,
  ]
}

const compare = (a: readonly number[], b: readonly number[]): number =>
  a.map((x, i) => x - (b[i] ?? 0)).find((d) => Math.abs(d) > 1e-6) ?? 0

const distinct = (all: readonly number[]): number[] =>
  [...all].sort((a, b) => a - b).filter((x, i, sorted) => i === 0 || x - (sorted[i - 1] ?? x) > 1e-3)

/** A mark of the ruler near the middle of a band, or its middle if it has none. */
function markIn({ low, high }: Band, grid: Card['grid']): number {
  const middle = (low + high) / 2
  const mark = toMm(nearest(mm(Math.round(middle * 1000) / 1000), grid))
  return mark > low + 1e-6 && mark < high - 1e-6 ? mark : middle
}
