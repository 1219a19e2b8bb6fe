/** A point of a drawing in mm: x to the right, y downwards. */
export type Spot = readonly [x: number, y: number]

/**
 * Writes a number; every number of a figure leaves through here. Millimetres keep three digits, which is a thousandth.
 *
 * @throws RangeError for what no drawing can hold.
 */
export function num(value: number, digits = 3): string {
  if (!Number.isFinite(value)) throw new RangeError(`Cannot write \`${value}\`, expected a finite number`)
  return String(rounded(value, digits))
}

/**
 * The same number as `Number(value.toFixed(digits))` in a fraction of the time; near a half, where the product is not to
 * be trusted, it is left to that.
 */
function rounded(value: number, digits: number): number {
  const unit = 10 ** digits
  const scaled = value * unit
  const whole = Math.round(scaled)
  const safe = Math.abs(scaled) < 1e9 && Math.abs(Math.abs(scaled - whole) - 0.5) > 1e-6
  return (safe ? whole / unit : Number(value.toFixed(digits))) + 0
}

/** `M0 0L10 0L10 5`: a path through the spots. */
export const openPath = (spots: readonly Spot[]): string =>
  `M${spots.map(([x, y]) => `${num(x)} ${num(y)}`).join('L')}`

/** `M0 0L10 0L10 5Z`: the same, back to its beginning. */
export const closedPath = (spots: readonly Spot[]): string => `${openPath(spots)}Z`
