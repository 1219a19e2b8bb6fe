import { mm, part } from '../length/length.ts'
import type { Wording } from '../wording/wording.ts'

/** What stands between numbers in a cell, and between runs of them. */
export interface ChartSigns {
  readonly item: string
  readonly run: string
}

/** Where decimals have a comma, a list of them wants another sign, and runs of lists one more. */
export const chartSigns = (wording: Wording): ChartSigns =>
  wording
    .in('mm')
    .bare(part(mm(1), 2))
    .includes(',')
    ? { item: '; ', run: ' / ' }
    : { item: ', ', run: '; ' }
