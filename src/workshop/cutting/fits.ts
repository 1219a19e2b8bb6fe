import { minus, type Size, zero } from '../../length/length.ts'
import type { Along, OfferedSheet, WantedPiece } from './cutting.ts'

/** A piece as it may lie on a sheet. */
export interface Lying {
  readonly size: Size
  readonly turned: boolean
}

/** What is left of a sheet when its edges are trimmed. */
export const usable = ({ size, trim = {} }: OfferedSheet): Size => ({
  width: minus(size.width, trim.left ?? zero, trim.right ?? zero),
  height: minus(size.height, trim.bottom ?? zero, trim.top ?? zero),
})

/** The ways in which a piece may lie on a sheet: it fits, a pattern keeps its top, and the fibres run as they should. */
export const waysOn = (piece: WantedPiece, sheet: OfferedSheet): Lying[] =>
  lyingsOf(piece).filter(
    ({ size, turned }) =>
      fitsOn(size, sheet) && !(turned && isUpright(piece, sheet)) && grainRuns(piece, sheet, turned),
  )

/** As it is, and turned, if that is not the same. */
export const lyingsOf = ({ size, grain }: WantedPiece): Lying[] => {
  const { width, height } = size
  const square = width.equals(height) && !grain
  return [
    { size, turned: false },
    ...(square ? [] : [{ size: { width: height, height: width }, turned: true }]),
  ]
}

export const fitsOn = ({ width, height }: Size, sheet: OfferedSheet): boolean => {
  const area = usable(sheet)
  return width.lte(area.width) && height.lte(area.height)
}

export const isUpright = ({ turns }: WantedPiece, { upright = false }: OfferedSheet): boolean =>
  upright || !turns

/** Whether the fibres run along the side that they should, or it is not known or does not matter. */
export const grainRuns = ({ grain }: WantedPiece, sheet: OfferedSheet, turned: boolean): boolean =>
  !grain || !sheet.grain || sheet.grain === (turned ? otherSide(grain) : grain)

const otherSide = (along: Along): Along => (along === 'width' ? 'height' : 'width')
