import type { Box } from '../fit/cutting/boxes.ts'
import { growBoxes, type Part, type Valued } from './grow-boxes.ts'
import type { Problem } from './problem.ts'

/** How long to look, and from where on. */
export interface Search {
  /** Only what is worth more than this is looked for. */
  readonly above: number
  /** Stop at the first that is. */
  readonly first: boolean
  /** Pairs of boxes that are tried at most. */
  readonly pairs: number
}

export interface Within {
  /** The best box found that is worth more than asked. */
  readonly box?: Box
  /** Its value, or what was asked. */
  readonly value: number
  /** No box is worth more than this: equal to `value` when the search came to its end. */
  readonly ceiling: number
  readonly pairs: number
}

/** The most value out of a sheet with no more of each piece than are wanted, exactly. */
export function mostWithin(
  valued: Valued,
  { counts, areas }: Pick<Problem, 'counts' | 'areas'>,
  { above, first, pairs }: Search,
): Within {
  // What is worth nothing only takes room.
  const worthy = counts.map((count, kind) => ((valued.values[kind] ?? 0) > 0 ? count : 0))
  let best: Part | undefined
  const value = (): number => best?.value ?? above
  const grown = growBoxes(
    valued,
    { counts: worthy, areas },
    {
      above: value,
      visit: (part) => {
        if (part.value > value()) best = part
        return first && best !== undefined
      },
      pairs,
    },
  )
  return {
    value: value(),
    ceiling: Math.max(value(), grown.ceiling),
    pairs: grown.pairs,
    ...(best && { box: best }),
  }
}
