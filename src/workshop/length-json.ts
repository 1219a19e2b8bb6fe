import { formatLength } from '../length/format.ts'
import { type Length, numberIn, type Size, type Unit } from '../length/length.ts'

/** A length for other programs: its exact value in both units, and the text a reader of this print sees. */
export interface LengthJson {
  readonly mm: number
  readonly in: number
  readonly text: string
}

export interface SizeJson {
  readonly width: LengthJson
  readonly height: LengthJson
}

/**
 * A length as every `--json` writes it.
 *
 * @param unit the unit of `text`.
 */
export const lengthJson = (x: Length, unit: Unit): LengthJson => ({
  mm: numberIn(x, 'mm'),
  in: numberIn(x, 'in'),
  text: formatLength(x, unit),
})

/** Width and height as every `--json` writes them. */
export const sizeJson = ({ width, height }: Size, unit: Unit): SizeJson => ({
  width: lengthJson(width, unit),
  height: lengthJson(height, unit),
})
