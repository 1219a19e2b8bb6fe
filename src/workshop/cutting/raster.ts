/**
 * The sizes that matter of what is cut from a sheet, along one side.
 *
 * Pieces can always be pushed to the left until each touches another or the edge, so every box is as wide as a sum of
 * piece widths: Herz's normal patterns (J. C. Herz, Recursive computational procedure for two-dimensional stock
 * cutting, IBM J. Res. Dev. 16 (1972) 462–469). Pushing the others to the right instead leaves of these only the sums
 * that are the most that fits beside another sum: the reduced raster points (G. Scheithauer and J. Terno, The
 * G4-heuristic for the pallet loading problem, J. Oper. Res. Soc. 47 (1996) 511–522). Whatever such a size is cut at
 * and whatever is left of it is again one of them.
 *
 * @param length of the sheet's side, in marks.
 * @param sides of the pieces along it.
 * @returns the sizes in ascending order, without nothing.
 */
export function rasterOf(length: number, sides: readonly number[]): number[] {
  const sums = sumsOf(length, sides)
  return [...new Set(sums.map((sum) => sums[lastUpTo(sums, length - sum)] ?? 0))]
    .filter((size) => size > 0)
    .sort((a, b) => a - b)
}

/** Every sum of sides up to a length, with none at all, in ascending order. */
function sumsOf(length: number, sides: readonly number[]): number[] {
  const sums = new Set([0])
  // A set is gone through in the order in which it grew, so what is added here is met later in the same round.
  for (const side of new Set(sides)) for (const sum of sums) if (sum + side <= length) sums.add(sum + side)
  return [...sums].sort((a, b) => a - b)
}

/** Where the last of the ascending numbers stands that is not above a limit; -1 if there is none. */
export function lastUpTo(numbers: readonly number[], limit: number): number {
  let [low, high] = [0, numbers.length]
  while (low < high) {
    const middle = (low + high) >> 1
    if ((numbers[middle] ?? 0) <= limit) low = middle + 1
    else high = middle
  }
  return low - 1
}

/** Where the first of the ascending numbers stands that is at least a size; as many as there are if none is. */
export const firstFrom = (numbers: readonly number[], size: number): number => lastUpTo(numbers, size - 1) + 1
