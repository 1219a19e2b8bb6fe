import { fitInside, hasFewMarks, mustCover } from '../../length/grid.ts'
import {
  type Length,
  larger,
  minus,
  mm,
  over,
  part,
  plus,
  shorter,
  smaller,
  times,
  toMm,
} from '../../length/length.ts'
import type { BuildInput, Limit } from '../style.ts'
import { type VLengths, vReach } from './v-reach.ts'

/** What is asked of the limits of a v-fold. `across` is a panel from the spine to its far edge, `along` the spine. */
export interface VInput extends Pick<BuildInput, 'grid' | 'say'> {
  readonly lengths: VLengths
  readonly across: Length
  readonly along: Length
}

type Key = keyof VLengths

/** What is wrong, and which lengths, made smaller (-1) or larger (1), may cure it. */
interface Fault {
  readonly about: Key
  readonly message: string
  readonly cures: readonly (readonly [key: Key, by: 1 | -1])[]
}

/** What of a v-fold cannot be made, or would not fold, or would stick out of the shut card. */
export function vLimits(input: VInput): Limit<Key>[] {
  const first = rankOf(input)
  const fault = faults[first]?.(input)
  if (!fault) return []
  // What cures everything, or else what cures this.
  const cure = cureOf(fault, input, faults.length) ?? cureOf(fault, input, first + 1)
  const { say, grid, along } = input
  const usual = [fitInside(part(along, 3), grid), fitInside(times(along, 0.4), grid)].map(say)
  return [
    {
      ...fault,
      suggestion: cure ?? `Begin with a wing of ${usual[0]} and a height of ${usual[1]}, as is usual`,
    },
  ]
}

const faults = [
  nothingFault,
  apexFault,
  runFault,
  riseFault,
  shapeFault,
  tabFault,
  outFault,
  downFault,
  upFault,
]

/** Which of the faults is the first; how many there are, if there is none. */
function rankOf(input: VInput): number {
  const rank = faults.findIndex((find) => find(input) !== undefined)
  return rank < 0 ? faults.length : rank
}

/** The smallest change of one length that leaves no fault before `rank`. */
function cureOf({ cures }: Fault, input: VInput, rank: number): string | undefined {
  const { lengths, along, grid, say } = input
  if (!hasFewMarks(along, grid)) return undefined
  for (const [key, by] of cures)
    for (
      let x = larger(smaller(lengths[key], along), grid);
      x.gt(0) && !shorter(along, x);
      x = plus(x, times(grid, by))
    )
      if (rankOf({ ...input, lengths: { ...lengths, [key]: x } }) >= rank)
        return `Make the ${key} at ${by < 0 ? 'most' : 'least'} ${say(x)}`
  return undefined
}

function nothingFault({ lengths }: VInput): Fault | undefined {
  const none = (['apex', 'run', 'rise', 'wing', 'height', 'tab'] as const).find((key) => !lengths[key].gt(0))
  return none && { about: none, message: `The ${none} of a v-fold cannot be nothing`, cures: [[none, 1]] }
}

function apexFault({ lengths: { apex }, along, say }: VInput): Fault | undefined {
  if (shorter(apex, along)) return undefined
  return {
    about: 'apex',
    message: `A point of the V at ${say(apex)} is not on a fold ${say(along)} long`,
    cures: [['apex', -1]],
  }
}

function runFault({ lengths: { run }, across, say }: VInput): Fault | undefined {
  if (!shorter(across, run)) return undefined
  return {
    about: 'run',
    message: `A mark ${say(run)} from the fold is not on a panel of ${say(across)}`,
    cures: [['run', -1]],
  }
}

function riseFault({ lengths: { apex, rise }, along, say }: VInput): Fault | undefined {
  if (!shorter(along, plus(apex, rise))) return undefined
  return {
    about: 'rise',
    message: `A mark ${say(rise)} beyond the point of the V is not on the card, which has ${say(minus(along, apex))} there`,
    cures: [['rise', -1]],
  }
}

/** The card opens flat with its wings standing only if the V of the piece is wider than that of the glue lines: s > g. */
function shapeFault({ lengths: { run, rise, wing, lift, height }, say }: VInput): Fault | undefined {
  if (!shorter(lift, times(wing, over(rise, run))))
    return {
      about: 'lift',
      message: `With a lift of ${say(lift)} the piece is a narrower V than its glue lines, and would tear when the card is opened flat`,
      cures: [
        ['lift', -1],
        ['run', -1],
      ],
    }
  if (shorter(lift, height)) return undefined
  return {
    about: 'height',
    message: `Wings ${say(height)} high in the middle have no outer edge when their base rises by ${say(lift)}`,
    cures: [['height', 1]],
  }
}

function tabFault({ lengths, grid, say }: VInput): Fault | undefined {
  const end = tabEndOf(lengths, grid)
  if (shorter(end, lengths.wing)) return undefined
  return {
    about: 'tab',
    message: `To keep clear of the fold, tabs of ${say(lengths.tab)} would begin ${say(end)} from the middle of the piece, beyond wings of ${say(lengths.wing)}`,
    cures: [
      ['tab', -1],
      ['wing', 1],
    ],
  }
}

/** Lengths off by less than this come of floats, in mm. */
const nothing = 1e-6
/** What covers `x` mm, on the ruler. */
const covering = (x: number, grid: Length): Length => mustCover(mm(Math.max(0, x - nothing)), grid)

/** Away from the fold: the panels must cover what lies between them. */
function outFault({ lengths, across, grid, say }: VInput): Fault | undefined {
  const { tip, shoulder, tabEnd } = vReach(lengths)
  const out = covering(Math.max(tip.out, shoulder.out, tabEnd.out), grid)
  if (!shorter(across, out)) return undefined
  return {
    about: toMm(lengths.height) > toMm(lengths.wing) ? 'height' : 'wing',
    message: `Shut, the wings reach ${say(out)} from the fold, beyond panels of ${say(across)}`,
    cures: [
      ['height', -1],
      ['wing', -1],
    ],
  }
}

/** Along the fold, beyond the point of the V. */
function downFault({ lengths, grid, say }: VInput): Fault | undefined {
  const down = covering(-vReach(lengths).tip.up, grid)
  if (!shorter(lengths.apex, down)) return undefined
  return {
    about: 'apex',
    message: `Shut, the tip of the wings lies ${say(down)} below the point of the V, where the card has ${say(lengths.apex)}`,
    cures: [
      ['apex', 1],
      ['height', -1],
    ],
  }
}

/** Along the fold, on the open side of the V. */
function upFault({ lengths, along, grid, say }: VInput): Fault | undefined {
  const { tip, shoulder, tabEnd } = vReach(lengths)
  const up = covering(Math.max(tip.up, shoulder.up, tabEnd.up), grid)
  const room = minus(along, lengths.apex)
  if (!shorter(room, up)) return undefined
  return {
    about: 'wing',
    message: `Shut, the wings and their tabs reach ${say(up)} above the point of the V, where the card has ${say(room)}`,
    cures: [
      ['wing', -1],
      ['apex', -1],
      ['tab', -1],
    ],
  }
}

/**
 * How far beside the apex the lower edge of a tab ends, so that the tab stays on its panel. Its slanting end runs from
 * the apex to a point `end` along the wing and `tab` below the crease. With the crease along (wing, lift), it stands to
 * the crease at an angle of tangent tab·wing / (end·(wing² + lift²)/wing - tab·lift), which may be no more than that of
 * the fold, run/rise. One mark more keeps it off the fold.
 */
export function tabEndOf({ run, rise, wing, lift, tab }: VLengths, grid: Length): Length {
  const steep = over(lift, wing)
  const end = over(rise, run).add(steep).div(steep.mul(steep).add(1))
  return plus(mustCover(times(tab, end), grid), grid)
}
