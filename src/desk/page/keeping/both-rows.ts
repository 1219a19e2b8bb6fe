import type { Row } from './line-changes.ts'

/** Equal lines that are left out between two differences. */
export interface Gap {
  readonly left: number
}

/** As many equal lines stay beside a difference, so that one sees where it is. */
const beside = 3

/** Leaves out long stretches in which both texts are the same. */
export function nearChanges(rows: readonly Row[]): readonly (Row | Gap)[] {
  const shown: (Row | Gap)[] = []
  let run: Row[] = []
  const flush = (last: boolean): void => {
    const before = shown.length === 0 ? 0 : beside
    const behind = last ? 0 : beside
    const left = run.length - before - behind
    if (left > 1) shown.push(...run.slice(0, before), { left }, ...run.slice(run.length - behind))
    else shown.push(...run)
    run = []
  }
  for (const row of rows)
    if (row.same) run.push(row)
    else {
      flush(false)
      shown.push(row)
    }
  flush(true)
  return shown
}
