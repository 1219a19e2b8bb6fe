/** A point of a drawing in mm: x to the right, y downwards. */
export type Spot = readonly [x: number, y: number]

/**
 * Writes a number; every number of a figure leaves through here. Millimetres keep three digits, which is a thousandth.
 *
 * @throws RangeError for what no drawing can hold.
 */
export function num(value: number, digits = 3): string {
  if (!Number.isFinite(value)) throw new RangeError(`Cannot write \`${value}\`, expected a finite number`)
  const text = String(Number(value.toFixed(digits)))
  return text === '-0' ? '0' : text
}

/** `M0 0L10 0L10 5Z`: a closed path through the spots. */
export const closedPath = (spots: readonly Spot[]): string =>
  `M${spots.map(([x, y]) => `${num(x)} ${num(y)}`).join('L')}Z`
