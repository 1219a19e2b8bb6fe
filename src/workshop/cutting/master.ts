import type { Pattern, Problem, Use } from './problem.ts'
import type { Column, Program } from './solver.ts'

/** What is to be as small as possible. */
export interface Goal {
  /** What a sheet of each supply costs: 1 to count them, or its price. */
  readonly costs: readonly number[]
  /** Sheets that count, at most. */
  readonly most?: number
}

/** Cost of leaving pieces out, by the paper they take: far above that of any sheet. */
export const leavingOut = 10_000

/**
 * Which patterns to cut how often, and from which supply: the cutting stock program of Gilmore and Gomory (A linear
 * programming approach to the cutting-stock problem, Oper. Res. 9 (1961) 849–859). Its columns are the supplies, the
 * patterns, and the pieces that are left out; its rows the kinds, the shapes, and the count of sheets if it is bounded.
 */
export function masterProgram(
  { counts, areas, shapes, supplies }: Problem,
  patterns: readonly Pattern[],
  { costs, most }: Goal,
  whole: boolean,
): Program {
  const shapeRow = (shape: number): number => counts.length + shape
  const countRow = counts.length + shapes.length
  const dearest = Math.max(1, ...costs)
  const sheet = Math.max(...shapes.map(({ width, height }) => width * height))
  return {
    rows: [
      ...counts.map((count) => ({ least: count, most: Number.POSITIVE_INFINITY })),
      ...shapes.map(() => ({ least: 0, most: Number.POSITIVE_INFINITY })),
      ...(most === undefined ? [] : [{ least: Number.NEGATIVE_INFINITY, most }]),
    ],
    columns: [
      ...supplies.map(
        ({ shape, limit, counted }, i): Column => ({
          cost: costs[i] ?? 0,
          most: limit,
          whole,
          shares: [[shapeRow(shape), 1], ...(counted && most !== undefined ? [[countRow, 1] as const] : [])],
        }),
      ),
      ...patterns.map(
        (pattern): Column => ({
          cost: 0,
          most: Number.POSITIVE_INFINITY,
          whole,
          shares: [
            ...pattern.counts.flatMap((count, kind) => (count > 0 ? [[kind, count] as const] : [])),
            [shapeRow(pattern.shape), -1],
          ],
        }),
      ),
      ...counts.map(
        (count, kind): Column => ({
          cost: (dearest * leavingOut * (areas[kind] ?? 0)) / sheet,
          most: count,
          whole,
          shares: [[kind, 1]],
        }),
      ),
    ],
  }
}

/** The patterns that an answer in whole numbers uses, and how often. */
export const usesOf = (
  { supplies }: Problem,
  patterns: readonly Pattern[],
  values: readonly number[],
): Use[] =>
  patterns.flatMap((pattern, i) => {
    const times = Math.round(values[supplies.length + i] ?? 0)
    return times > 0 ? [{ pattern, times }] : []
  })
