import type { Highs } from 'highs'

/** A linear program to be made as small as it can be. */
export interface Program {
  readonly columns: readonly Column[]
  /** The least and the most that each row's sum may be; either may be infinite. */
  readonly rows: readonly { readonly least: number; readonly most: number }[]
}

/** One unknown: never below nothing. */
export interface Column {
  readonly cost: number
  readonly most: number
  /** Whether only whole numbers will do. */
  readonly whole?: boolean
  /** Its share in the rows. */
  readonly shares: readonly (readonly [row: number, share: number])[]
}

export interface Solved {
  readonly values: readonly number[]
  /** What one more in each row would cost; only of a program without whole numbers. */
  readonly duals: readonly number[]
  /** Whether it is the best there is, and not only the best that was found. */
  readonly best: boolean
}

/** Undefined when there is no answer, or none was found. */
export type Solver = (program: Program, search?: MipSearch) => Solved | undefined

export interface MipSearch {
  /** Branches that are looked at: the same number gives the same answer on every machine. */
  readonly nodes?: number
  /** Whether to begin again when much is settled at the root; false is quicker. */
  readonly restart?: boolean
  /** An answer that costs no more than this is good enough. */
  readonly enough?: number
}

/** Seconds after which a program is given up, whatever it is: no answer depends on it unless something is wrong. */
const lastResort = 300

let loaded: Promise<Highs> | undefined

/** Loads HiGHS (Huangfu and Hall, Math. Program. Comput. 10 (2018) 119–142) when it is first needed. */
export async function loadSolver(): Promise<Solver> {
  // Its types are those of a CommonJS module, whose function stands one level deeper for some who read them.
  loaded ??= import('highs').then(({ default: load }) => (load as unknown as () => Promise<Highs>)())
  const highs = await loaded
  return (program, search = {}) => solve(highs, program, search)
}

function solve(
  highs: Highs,
  { columns, rows }: Program,
  { nodes = 0, restart = true, enough }: MipSearch,
): Solved | undefined {
  const infinite = (n: number): number => (Number.isFinite(n) ? n : n > 0 ? highs.infinity : -highs.infinity)
  const { continuous, integer } = highs.constants.variableType
  const whole = columns.some((column) => column.whole)
  const starts = [0]
  for (const { shares } of columns) starts.push((starts.at(-1) ?? 0) + shares.length)
  const { optimal, solutionLimit, iterationLimit, timeLimit, objectiveTarget } = highs.constants.modelStatus
  const entries = columns.flatMap(({ shares }) => shares)
  return highs.withModel(
    {
      numCols: columns.length,
      numRows: rows.length,
      colCost: columns.map(({ cost }) => cost),
      colLower: columns.map(() => 0),
      colUpper: columns.map(({ most }) => infinite(most)),
      rowLower: rows.map(({ least }) => infinite(least)),
      rowUpper: rows.map(({ most }) => infinite(most)),
      matrix: {
        format: 'csc',
        numRows: rows.length,
        numCols: columns.length,
        starts,
        indices: entries.map(([row]) => row),
        values: entries.map(([, share]) => share),
      },
      ...(whole && { integrality: columns.map((column) => (column.whole ? integer : continuous)) }),
    },
    (model) => {
      model.options.set({
        output_flag: false,
        time_limit: lastResort,
        ...(whole && { mip_max_nodes: nodes, mip_rel_gap: 0, mip_allow_restart: restart }),
        ...(whole && enough !== undefined && { objective_target: enough }),
      })
      model.run()
      const status = model.getModelStatus()
      const best = status === optimal
      const stopped = [solutionLimit, iterationLimit, timeLimit, objectiveTarget].some((s) => s === status)
      if (!best && !(whole && stopped)) return undefined
      if (Number(model.info.get('primal_solution_status')) !== 2) return undefined
      const { colValue, rowDual } = model.getSolution()
      return { values: [...colValue], duals: [...rowDual], best }
    },
  )
}
