import { hasErrors } from '../length/finding.ts'
import { formatGrid } from '../length/format.ts'
import { type FindingJson, findingJson } from './finding-json.ts'
import { type CardJson, cardJson } from './measures.ts'
import type { SizeChart } from './size-chart.ts'

/** What `sizes --json` answers: every card of the lesson in each size and unit. */
export interface SizeChartJson {
  readonly lesson: string
  readonly sizes: readonly {
    /** As the lesson names it. */
    readonly size: string
    readonly units: 'in' | 'mm'
    readonly grid: string
    readonly works: boolean
    readonly cards: readonly CardJson[]
  }[]
  /** What is wrong in the sizes. */
  readonly findings: readonly FindingJson[]
}

/** A chart for other programs, its measures as those of `measure --json`. */
export const sizeChartJson = ({ title, prints, findings }: SizeChart): SizeChartJson => ({
  lesson: title,
  sizes: prints.map(({ label, unit, print }) => ({
    size: label,
    units: unit,
    grid: formatGrid(print.grid),
    works: !hasErrors(print.findings),
    cards: print.cards.map((card) => cardJson(card, print)),
  })),
  findings: findings.map(findingJson),
})
