import { count, type Listing, type Section, words } from '../../src/workshop/listing.ts'
import type { Ratio } from './ratio.ts'

/** The lines of one part of the table. */
export interface Part {
  readonly heading: string
  readonly ratios: readonly Ratio[]
}

/** All parts as one table, each with the same columns. */
export const tableOf = (title: string, intro: string, parts: readonly Part[]): Listing => ({
  title,
  intro,
  sections: parts.map(sectionOf),
})

const sectionOf = ({ heading, ratios }: Part): Section => ({
  heading,
  columns: [
    words('what'),
    count('takes'),
    words('against'),
    count('that takes'),
    count('times'),
    words('goal'),
    count('runs'),
  ],
  rows: ratios.map((ratio) => [
    ratio.what,
    amount(ratio.ours, ratio.unit),
    ratio.against,
    amount(ratio.floor, ratio.unit),
    (ratio.ours / ratio.floor).toFixed(2),
    goalText(ratio),
    String(ratio.runs),
  ]),
})

const amount = (x: number, unit: Ratio['unit'] = undefined): string =>
  `${x.toFixed(x < 10 ? 2 : x < 100 ? 1 : 0)} ${unit ?? 'ms'}`

function goalText({ ours, floor, goal }: Ratio): string {
  if (!goal) return ''
  const times = ours / floor
  const [words, met] =
    'atMost' in goal
      ? [`at most ${goal.atMost}`, times <= goal.atMost]
      : [`at least ${goal.atLeast}`, times >= goal.atLeast]
  return met ? words : `${words}, missed`
}
