import { fitInside } from '../../length/grid.ts'
import { type Length, minus, part, plus, smaller, times } from '../../length/length.ts'
import { point, strip } from '../strip.ts'
import type { Bond, Piece, Stock, Structure } from '../structure.ts'
import { glued } from './glue.ts'

/** Where the bars of a box card go. */
export interface BarInput {
  readonly bars: number
  /** Of the box: how wide its front is, how deep it is, and how high its sides are. */
  readonly wide: Length
  readonly depth: Length
  readonly wall: Length
  /** Height of the bars, and the most that their tabs may be wide. */
  readonly height: Length
  readonly tab: Length
  readonly stock: Stock
  readonly grid: Length
}

/** The distance from the front to the first bar, from that to the next, and so on. */
const barStep = ({ bars, depth, grid }: Pick<BarInput, 'bars' | 'depth' | 'grid'>): Length =>
  fitInside(part(depth, bars + 1), grid)

export const barNames = (bars: number): string[] => Array.from({ length: bars }, (_, i) => `bar ${i + 1}`)

/**
 * Bars across a box: left tab · M · bar · M · right tab, the tabs folded to the back and stuck inside the sides.
 *
 * @param rightEnd where the right side meets the front, and `leftStart` where the front meets the left side, in the base.
 */
export function barsAcross(
  input: BarInput,
  rightEnd: Length,
  leftStart: Length,
): Pick<Structure, 'plates' | 'hinges' | 'bonds'> & { readonly pieces: readonly Piece[] } {
  const { bars, wide, wall, height, stock } = input
  const step = barStep(input)
  const tab = smaller(input.tab, step)
  const sheets = barNames(bars).map((name) =>
    strip({
      piece: 'bar',
      stock,
      panels: [
        { name: `${name} left tab`, length: tab },
        { name, length: wide },
        { name: `${name} right tab`, length: tab },
      ],
      folds: ['mountain', 'mountain'],
      across: height,
      along: 'width',
    }),
  )
  const up = minus(wall, height)
  // A tab lies face down on the inside of its side, and reaches from the bar towards the back.
  const stuck = (plate: string, onto: string, x: Length): Bond =>
    glued(plate, onto, point(x, up), { over: true })
  return {
    pieces: sheets.slice(0, 1).flatMap(({ pieces: [piece] }) => [{ ...piece, count: bars }]),
    plates: sheets.flatMap(({ plates }) => plates),
    hinges: sheets.flatMap(({ hinges }) => hinges),
    bonds: barNames(bars).flatMap((name, i) => {
      const behind = times(step, i + 1)
      return [
        stuck(`${name} left tab`, 'left side', plus(leftStart, behind, tab)),
        stuck(`${name} right tab`, 'right side', plus(minus(rightEnd, behind), tab, wide)),
      ]
    }),
  }
}
