/** Every selection of so many of each kind, numbered so that the numbers of two that do not overlap add up. */
export interface Selections {
  /** The number of the selection of all pieces; 0 is none. */
  readonly whole: number
  /** How many of each kind selection `n` has. */
  digits(n: number): number[]
  /** The kind of which `n` is just one piece, if it is. */
  single(n: number): number | undefined
  /** Every selection out of these, from none to all of them. */
  parts(digits: readonly number[], visit: (part: number) => void): void
}

/** The selections of pieces of which there are so many of each kind. */
export function selectionsOf(counts: readonly number[]): Selections {
  const places: number[] = []
  let size = 1
  for (const count of counts) {
    places.push(size)
    size *= count + 1
  }
  const parts = (digits: readonly number[], visit: (part: number) => void, at = 0, sum = 0): void => {
    if (at === counts.length) visit(sum)
    else
      for (let k = 0; k <= (digits[at] ?? 0); k++) parts(digits, visit, at + 1, sum + k * (places[at] ?? 0))
  }
  return {
    whole: size - 1,
    digits: (n) => places.map((place, i) => Math.floor(n / place) % ((counts[i] ?? 0) + 1)),
    single: (n) => {
      const kind = places.indexOf(n)
      return kind < 0 ? undefined : kind
    },
    parts: (digits, visit) => parts(digits, visit),
  }
}

/** How many ways there are to part all selections in two: what finding the boxes takes. */
export const waysToPart = (counts: readonly number[]): number =>
  counts.reduce((product, count) => product * (((count + 1) * (count + 2)) / 2), 1)
