/** How half pages are put on sheets: one sheet for each, side by side as they come, or to be folded and stapled. */
export const sheetings = ['single', 'pairs', 'booklet'] as const
export type Sheeting = (typeof sheetings)[number]

/** One side of a sheet that lies on its long edge: the numbers of its two pages, from 1; null where it stays empty. */
export interface Side {
  readonly left: number | null
  readonly right: number | null
}

/**
 * The sides of the sheets, in the order in which they are printed: for a booklet front and back of the outermost sheet,
 * then of the next one in it.
 *
 * A booklet is saddle stitched: its pages are padded to a multiple of four, n; the front of sheet k has page n - 2k + 2 on
 * the left and 2k - 1 on the right, its back 2k and n - 2k + 1, so that the two pages of any side add up to n + 1. (Common
 * practice of binders, no source; it follows from folding a stack of sheets once, which is how the tests check it.)
 *
 * @param pages how many there are; with none there are no sides.
 */
export function sheetSides(pages: number, sheeting: Exclude<Sheeting, 'single'>): Side[] {
  const page = (n: number): number | null => (n <= pages ? n : null)
  if (sheeting === 'pairs')
    return Array.from({ length: Math.ceil(pages / 2) }, (_, i) => ({
      left: page(2 * i + 1),
      right: page(2 * i + 2),
    }))
  const n = Math.ceil(pages / 4) * 4
  return Array.from({ length: n / 4 }, (_, i) => [
    { left: page(n - 2 * i), right: page(2 * i + 1) },
    { left: page(2 * i + 2), right: page(n - 2 * i - 1) },
  ]).flat()
}
