import type { Box } from '../fit/cutting/boxes.ts'
import { atMost, boxAt, countsIn } from './choice.ts'
import type { Grid } from './grid.ts'
import { limitedValue, limitedWork } from './limited-value.ts'
import { mostValue, type Table } from './most-value.ts'
import { mostWithin } from './most-within.ts'
import type { Problem } from './problem.ts'
import type { Sheet } from './task.ts'
import type { Work } from './work.ts'

/** What comes of asking for a pattern that is worth more than a sheet. */
export interface Priced {
  readonly boxes: readonly Box[]
  /** No pattern of the wanted pieces is worth more. */
  readonly ceiling: number
}

/** Pairs that the exact search may try each time: far more than the plans of a class ask for. */
const pairs = 60_000

/** Steps of work that one pair costs. */
export const pairSteps = 40

/**
 * Patterns from a sheet that are worth more than a threshold: first with any number of each piece, then with no more
 * than are wanted, quickly; and if both find none, exactly.
 */
export function price(
  { shape, grid, fine, bounding }: Sheet,
  values: readonly number[],
  problem: Pick<Problem, 'counts' | 'areas'>,
  above: number,
  work: Work,
): Priced {
  const { counts } = problem
  const table = mostValue(bounding, values)
  work.spend(bounding.work)
  const ceiling = table.best.at(-1) ?? 0
  if (ceiling <= above) return { boxes: [], ceiling }
  const worth = (box: Box): number =>
    countsIn(box, values.length).reduce((sum, count, kind) => sum + count * (values[kind] ?? 0), 0)
  const unlimited = whole(fine, fine === bounding ? table : mostValue(fine, values), counts)
  if (fine !== bounding) work.spend(fine.work)
  if (unlimited && (worth(unlimited) === ceiling || (fine !== grid && worth(unlimited) > above)))
    return { boxes: [unlimited], ceiling }
  const limited = whole(grid, limitedValue(grid, values, counts), counts)
  work.spend(limitedWork(grid, counts))
  const boxes = [limited, unlimited].flatMap((box) => (box && worth(box) > above ? [box] : []))
  if (boxes.length > 0) return { boxes, ceiling }
  const found = mostWithin({ shape, grid: bounding, values, table }, problem, { above, first: true, pairs })
  work.spend(found.pairs * pairSteps + bounding.work)
  return { boxes: found.box ? [found.box] : [], ceiling: Math.min(ceiling, found.ceiling) }
}

/** The pattern of the whole sheet. */
export function whole(grid: Grid, { choices }: Table, counts: readonly number[]): Box | undefined {
  const box = boxAt(grid, choices, grid.across.sizes.length - 1, grid.up.sizes.length - 1)
  return box && atMost(box, counts)
}
