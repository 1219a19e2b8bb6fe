import { formatSize } from '../../length/format.ts'
import type { Unit } from '../../length/length.ts'
import type { OfferedSheet, ShortPiece, WantedPiece } from './cutting.ts'
import { fitsOn, grainRuns, isUpright, lyingsOf, waysOn } from './fits.ts'

/** Why a piece comes out of none of the sheets, with what would help; undefined when it does. */
export function whyRefused(
  piece: WantedPiece,
  sheets: readonly OfferedSheet[],
  unit: Unit,
): Pick<ShortPiece, 'why' | 'suggestion'> | undefined {
  const { stock, size } = piece
  const sizes = formatSize(size, unit)
  if (sheets.length === 0)
    return {
      why: `There is no sheet of \`${stock}\``,
      suggestion: `List its sheets: at least ${sizes}`,
    }
  if (sheets.some((sheet) => waysOn(piece, sheet).length > 0)) return undefined
  const lying = sheets.flatMap((sheet) =>
    lyingsOf(piece).flatMap(({ size: as, turned }) => (fitsOn(as, sheet) ? [{ sheet, turned }] : [])),
  )
  if (lying.length === 0)
    return {
      why: `With ${sizes} it is larger than every sheet of \`${stock}\`${trimmed(sheets)}`,
      suggestion: `Get a sheet of at least ${sizes}, or make the piece smaller`,
    }
  const upright = lying.filter(({ sheet, turned }) => !(turned && isUpright(piece, sheet)))
  if (upright.length === 0)
    return {
      why: `With ${sizes} it fits on a sheet of \`${stock}\` only when it is turned, and its direction must stay`,
      suggestion: `Get a sheet of at least ${sizes}, or a stock without direction`,
    }
  const across = upright.every(({ sheet, turned }) => !grainRuns(piece, sheet, turned))
  return {
    why: across
      ? `Its fibres must run along its ${piece.grain}, and on the sheets of \`${stock}\` that it fits on they run across`
      : `It fits on no sheet of \`${stock}\` with its fibres along its ${piece.grain}`,
    suggestion: `Get sheets whose fibres run the other way, or larger ones`,
  }
}

const trimmed = (sheets: readonly OfferedSheet[]): string =>
  sheets.some(({ trim }) => trim && Object.values(trim).some((edge) => edge.gt(0)))
    ? ' when its edges are trimmed'
    : ''
