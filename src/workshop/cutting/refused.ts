import type { OfferedSheet, ShortReason, WantedPiece } from './cutting.ts'
import { fitsOn, grainRuns, isUpright, lyingsOf, waysOn } from './fits.ts'

/** Why a piece comes out of none of the sheets; undefined when it does. */
export function whyRefused(piece: WantedPiece, sheets: readonly OfferedSheet[]): ShortReason | undefined {
  const { size } = piece
  if (sheets.length === 0) return { kind: 'no sheet', size }
  if (sheets.some((sheet) => waysOn(piece, sheet).length > 0)) return undefined
  const lying = sheets.flatMap((sheet) =>
    lyingsOf(piece).flatMap(({ size: as, turned }) => (fitsOn(as, sheet) ? [{ sheet, turned }] : [])),
  )
  if (lying.length === 0) return { kind: 'too large', size, trimmed: sheets.some(isTrimmed) }
  const upright = lying.filter(({ sheet, turned }) => !(turned && isUpright(piece, sheet)))
  if (upright.length === 0) return { kind: 'only turned', size }
  return {
    kind: 'fibres',
    along: piece.grain ?? 'width',
    across: upright.every(({ sheet, turned }) => !grainRuns(piece, sheet, turned)),
  }
}

const isTrimmed = ({ trim = {} }: OfferedSheet): boolean => Object.values(trim).some((edge) => edge.gt(0))
