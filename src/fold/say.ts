import { listOf } from '../length/finding.ts'
import { formatLength } from '../length/format.ts'
import { isOnGrid } from '../length/grid.ts'
import { inches } from '../length/length.ts'
import { lengthOf } from './whole.ts'

/**
 * A number of units as a length. In inches if the card's measures need fifths of a millimetre, as inches do, and a
 * ruler has the mark; else in millimetres.
 */
export function sayLength(n: number, perMm: bigint): string {
  const length = lengthOf(n, perMm)
  return formatLength(length, perMm % 5n === 0n && isOnGrid(length, inches(1, 64)) ? 'in' : 'mm')
}

/** `a`, `b` and `c`: each once. */
export const sayNames = (names: readonly string[]): string =>
  listOf([...new Set(names)].map((name) => `\`${name}\``))
