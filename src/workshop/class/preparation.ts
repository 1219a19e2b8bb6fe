import { hingesOf } from '../../card/scores.ts'
import type { CuttingPlan, OfferedSheet } from '../cutting/cutting.ts'
import { aheadIn, type ToHaveReady } from './ahead.ts'
import type { ClassFile, Preparation } from './class-file.ts'
import { type KitLabel, kitLabels } from './kit-labels.ts'
import { letterOf } from './sheets-listing.ts'
import { classTitle, type Taught } from './taught.ts'
import { sheetsOf } from './to-cut.ts'

/** What is done on the evening before a class, and about how long it takes. */
export interface PreparationList {
  readonly title: string
  readonly kits: number
  /** Of everything that has an estimate. */
  readonly minutes: number
  readonly cutting: readonly CuttingWork[]
  readonly scoring: readonly ScoringWork[]
  /** What the lessons say to have ready; nobody knows how long that takes. */
  readonly ahead: readonly ToHaveReady[]
  readonly packing: readonly PackingWork[]
  /** What the minutes are worked out with. */
  readonly rates: Preparation['minutes']
  /** Whether the class file gives all of those that are used. */
  readonly measured: boolean
  /** Sheets that the trimmer takes at once. */
  readonly stack: number
}

/** The sheets that are cut alike. */
export interface CuttingWork {
  readonly stock: string
  /** Whether it is what is left of another sheet. */
  readonly offcut: boolean
  readonly sheet: OfferedSheet['size']
  /** Which layout of the cutting plan, where that stock and size has several. */
  readonly layout?: string
  readonly sheets: number
  /** How often the trimmer is filled. */
  readonly stacks: number
  /** Of each filling. */
  readonly cuts: number
  readonly minutes: number
}

/** The pieces of one name that are scored. */
export interface ScoringWork {
  readonly lesson: string
  readonly piece: string
  readonly count: number
  /** Lines on each. */
  readonly scores: number
  readonly minutes: number
}

export interface PackingWork {
  readonly lesson: string
  readonly kits: number
  /** Lines of the packing list. */
  readonly items: number
  readonly minutes: number
}

/**
 * Works out what is done before a class. A stack that is cut together counts once for each cut; scores are made on one
 * piece after the other, and kits are packed one after the other.
 */
export function prepareClass(
  file: ClassFile,
  lessons: readonly Taught[],
  { plans }: Pick<CuttingPlan, 'plans'>,
): PreparationList {
  const { prepare, trimmer } = file
  const { minutes: rates, own } = prepare
  const cutting = prepare.cut ? plans.flatMap((plan) => cuttingOf(plan, trimmer.stack, rates)) : []
  const scoring = prepare.score ? lessons.flatMap((taught) => scoringOf(taught, rates)) : []
  const packing = packingOf(kitLabels(file, lessons), rates)
  const used = [
    ...(cutting.length > 0 ? (['cut'] as const) : []),
    ...(scoring.length > 0 ? (['score'] as const) : []),
    'item' as const,
    'kit' as const,
  ]
  return {
    title: classTitle(file, lessons),
    kits: packing.reduce((sum, { kits }) => sum + kits, 0),
    minutes: [...cutting, ...scoring, ...packing].reduce((sum, { minutes }) => sum + minutes, 0),
    cutting,
    scoring,
    ahead: lessons.flatMap(({ lesson }) => aheadIn(lesson)),
    packing,
    rates,
    measured: used.every((rate) => own.has(rate)),
    stack: trimmer.stack,
  }
}

function cuttingOf(
  { stock, sheet, layouts }: CuttingPlan['plans'][number],
  stack: number,
  { cut }: Preparation['minutes'],
): CuttingWork[] {
  return layouts.map(({ times, cuts }, i) => {
    const stacks = Math.ceil(times / stack)
    return {
      stock,
      offcut: sheet.offcut === true,
      sheet: sheet.size,
      ...(layouts.length > 1 && { layout: letterOf(i) }),
      sheets: times,
      stacks,
      cuts: cuts.length,
      minutes: stacks * cuts.length * cut,
    }
  })
}

function scoringOf({ lesson, kits }: Taught, { score }: Preparation['minutes']): ScoringWork[] {
  const several = lesson.cards.length > 1
  return lesson.cards.flatMap(({ card }) =>
    sheetsOf(card).flatMap(({ piece, structure }) => {
      const scores = hingesOf(structure, piece.name).length
      const count = piece.count * kits
      if (scores === 0 || count === 0) return []
      return [
        {
          lesson: lesson.frontMatter.title,
          piece: several ? `${piece.name} (${card.name})` : piece.name,
          count,
          scores,
          minutes: count * scores * score,
        },
      ]
    }),
  )
}

function packingOf(labels: readonly KitLabel[], { item, kit }: Preparation['minutes']): PackingWork[] {
  const lessons = [...new Set(labels.map(({ title }) => title))]
  return lessons.map((lesson) => {
    const own = labels.filter(({ title }) => title === lesson)
    const items = own[0]?.contents.length ?? 0
    return { lesson, kits: own.length, items, minutes: own.length * (kit + items * item) }
  })
}
