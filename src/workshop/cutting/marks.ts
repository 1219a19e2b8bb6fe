import Fraction from 'fraction.js'
import { groupBy } from '../../length/group-by.ts'
import { type Length, over, plus, zero } from '../../length/length.ts'
import type { OfferedSheet, WantedPiece } from './cutting.ts'
import { usable, waysOn } from './fits.ts'
import type { Problem, Shape, Supply } from './problem.ts'
import type { Scale } from './strokes.ts'

/** A problem in marks, and what its numbers stand for. */
export interface Marked {
  readonly problem: Problem
  readonly scale: Scale
  /** The pieces of each kind: those of the same size that may lie the same ways. */
  readonly kinds: readonly (readonly WantedPiece[])[]
  /** The sheet that each shape is of. */
  readonly shapes: readonly OfferedSheet[]
}

/**
 * A problem of one stock in whole marks. The gap of the knife is added to every side of a piece and once to the sheet:
 * then `n` pieces with `n - 1` gaps between them fit just when they fit without gaps.
 */
export function inMarks(
  pieces: readonly WantedPiece[],
  sheets: readonly OfferedSheet[],
  gap: Length,
): Marked {
  const kinds = [...groupBy(pieces, kindKey).values()]
  const heads = kinds.flatMap(([head]) => head ?? [])
  const sides = heads.flatMap(({ size }) => [plus(size.width, gap), plus(size.height, gap)])
  const mark = sides.reduce<Length>((a, b) => a.gcd(b) as Length, zero)
  // Sums of sides are whole marks, so what a sheet has beyond its last whole mark is of no use.
  const marks = (length: Length): number => over(plus(length, gap), mark).floor().valueOf()
  const coin = coinOf(sheets)
  return {
    scale: { mark, gap },
    kinds,
    shapes: sheets,
    problem: {
      counts: kinds.map((kind) => kind.reduce((sum, { count }) => sum + count, 0)),
      areas: heads.map(({ size }) => marks(size.width) * marks(size.height)),
      shapes: sheets.map((sheet): Shape => {
        const { width, height } = usable(sheet)
        return {
          width: marks(width),
          height: marks(height),
          ways: heads.flatMap((piece, kind) =>
            waysOn(piece, sheet).map(({ size, turned }) => ({
              kind,
              width: marks(size.width),
              height: marks(size.height),
              turned,
            })),
          ),
        }
      }),
      supplies: sheets.flatMap((sheet, shape) => suppliesOf(sheet, shape, coin)),
    },
  }
}

const kindKey = ({ size, turns, grain }: WantedPiece): string =>
  [size.width.toFraction(), size.height.toFraction(), turns, grain].join(' ')

/** The coin that all prices are whole numbers of. */
const coinOf = (sheets: readonly OfferedSheet[]): Fraction =>
  sheets.reduce((coin, { price }) => (price && price.n !== 0n ? coin.gcd(price) : coin), new Fraction(0))

/** Sheets that are there already cost nothing, and those that are bought their price. */
function suppliesOf(sheet: OfferedSheet, shape: number, coin: Fraction): Supply[] {
  const { limit = Number.POSITIVE_INFINITY, offcut = false, price = new Fraction(0) } = sheet
  const have = Math.min(sheet.have ?? 0, limit)
  const coins = coin.n === 0n ? 0 : price.div(coin).valueOf()
  const supply = { shape, counted: !offcut }
  return [
    { ...supply, limit: have, price: 0 },
    { ...supply, limit: limit - have, price: coins },
  ].filter((one) => one.limit > 0)
}
