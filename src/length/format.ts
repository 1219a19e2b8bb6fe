import Fraction from 'fraction.js'
import { listOf } from './finding.ts'
import { isOnGrid } from './grid.ts'
import { inches, type Length, type Size, type Unit, unitLength } from './length.ts'

/** A number as a teacher writes it: `5 7/8`, `149`, `0.5`. */
export function formatNumber(x: Fraction, unit: Unit): string {
  const sign = x.s < 0n ? '-' : ''
  const value = x.abs()
  // Inches are read off a ruler as halves, quarters … sixty-fourths; anything else is a decimal.
  if (unit === 'in' && isPowerOfTwo(value.d)) return sign + value.toFraction(true)
  return sign + decimal(value)
}

/** A length without its unit. */
export const formatBare = (x: Length, unit: Unit): string => formatNumber(x.div(unitLength[unit]), unit)

/** `5 7/8 in`, `149 mm`. */
export const formatLength = (x: Length, unit: Unit): string => `${formatBare(x, unit)} ${unit}`

/** `8 × 6 in`, `203 × 152 mm`: width first. */
export const formatSize = ({ width, height }: Size, unit: Unit): string =>
  `${formatBare(width, unit)} × ${formatBare(height, unit)} ${unit}`

/** `1, 2, 8 and 9 in`: the unit stands once, at the end. */
export const formatLengths = (lengths: readonly Length[], unit: Unit): string =>
  lengths.length === 0 ? 'none' : `${listOf(lengths.map((x) => formatBare(x, unit)))} ${unit}`

/** A ruler grid as it is named: `1/16 in`, `1 mm`, whichever unit it is exact in. */
export const formatGrid = (grid: Length): string =>
  isOnGrid(grid, inches(1, 64)) ? formatLength(grid, 'in') : formatLength(grid, 'mm')

function isPowerOfTwo(n: bigint): boolean {
  return n <= 64n && (n & (n - 1n)) === 0n
}

function decimal(x: Fraction): string {
  return String(Number(new Fraction(x.round(3)).toString(3)))
}
