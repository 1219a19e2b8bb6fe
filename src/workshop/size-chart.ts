import { type Finding, hasErrors } from '../length/finding.ts'
import type { Unit } from '../length/length.ts'
import { mainCard } from '../lesson/figure-target.ts'
import type { FilledLesson, Lesson, OtherSize, ProvenCard } from '../lesson/lesson.ts'
import { bySize, findingsAt } from '../lesson/sizes/findings.ts'
import { otherSizes, type SizePrint, sizePrints } from '../lesson/sizes/offered.ts'
import type { Wording } from '../wording/wording.ts'
import { type ChartGroup, chartGroups } from './size-chart-rows.ts'

/** One column of a chart: a size in one unit. */
export interface ChartColumn {
  /** The size as the lesson names it: `6 × 6 in`, `A6 landscape`. */
  readonly label: string
  readonly unit: Unit
  /** Whether the card works in it; else its cells are empty. */
  readonly works: boolean
}

/** The chart of one card. */
export interface ChartBlock {
  readonly card: string
  readonly columns: readonly ChartColumn[]
  readonly groups: readonly ChartGroup[]
}

/** Every measure of a lesson's cards in every size that it is offered in, in the units that are wanted. */
export interface SizeChart {
  readonly title: string
  /** The language of the chart, in the unit of the lesson. */
  readonly wording: Wording
  readonly units: readonly Unit[]
  readonly blocks: readonly ChartBlock[]
  /** What is to be said below: what the numbers leave out. */
  readonly notes: readonly string[]
  /** What is wrong in the sizes, and what would cure it. */
  readonly findings: readonly Finding[]
  readonly prints: readonly SizePrint[]
}

/**
 * The chart of a lesson's sizes. Only the main card has other sizes. Every print is a card of its own, whose lengths lie
 * on the ruler of its unit: nothing is converted.
 *
 * @param own the lesson in its own size and unit, without errors.
 * @param more sizes besides those of the front matter.
 */
export function sizeChart(
  lesson: Lesson,
  own: FilledLesson,
  units: readonly Unit[],
  more: readonly OtherSize[] = [],
): SizeChart {
  const prints = sizePrints(lesson, own, otherSizes(own, more), units)
  const main = mainCard(own.cards.map(({ card }) => card))?.name
  const blocks = own.cards.map(({ card }): ChartBlock => {
    const some = card.name === main ? prints : prints.filter(({ other }) => !other)
    // All of a unit stand side by side: whoever holds a ruler looks at one half of the chart.
    const sorted = units.flatMap((unit) => some.filter((print) => print.unit === unit))
    return {
      card: own.wording.name(card.name),
      columns: sorted.map(({ other, label, unit, print }) => ({
        label: other ? turnedLabel(label, own.wording) : own.wording.size(card.closed),
        unit,
        works: works(print, card.name),
      })),
      groups: chartGroups(
        sorted.map(({ print }) => [cardIn(print, card.name), print.wording] as const),
        own.wording,
      ),
    }
  })
  return {
    title: own.frontMatter.title,
    wording: own.wording,
    units,
    blocks,
    notes: notesOn(own, blocks),
    findings: bySize(prints).flatMap((some) => findingsAt(lesson, own, some, prints)),
    prints,
  }
}

const works = (print: FilledLesson, name: string): boolean =>
  cardIn(print, name) !== undefined && !hasErrors(print.findings)

const cardIn = (print: FilledLesson, name: string): ProvenCard | undefined =>
  hasErrors(print.findings) ? undefined : print.cards.find(({ card }) => card.name === name)

function notesOn({ cards, wording }: FilledLesson, blocks: readonly ChartBlock[]): string[] {
  const text = blocks
    .flatMap(({ groups }) => groups.flatMap(({ rows }) => rows.flatMap(({ cells }) => cells)))
    .join()
  const cut = cards.flatMap(({ card }) => card.structure.pieces).filter(({ cuts }) => cuts.length > 0)
  return [
    wording.say('chart.how'),
    ...(text.includes('(') ? [wording.say('chart.extents-how')] : []),
    ...(cut.length > 0
      ? [wording.say('chart.cuts-how', { pieces: wording.list(cut.map(({ name }) => wording.name(name))) })]
      : []),
  ]
}

/** A size as the lesson names it; how it lies is said in the language of the chart. */
function turnedLabel(label: string, wording: Wording): string {
  const [, size, turned] = /^(.+) (landscape|portrait)$/i.exec(label) ?? []
  return size && turned ? wording.say('chart.turned', { size, turned: turned.toLowerCase() }) : label
}
