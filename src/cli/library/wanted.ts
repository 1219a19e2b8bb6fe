import { hasErrors } from '../../length/finding.ts'
import type { Unit } from '../../length/length.ts'
import { readSize } from '../../length/text.ts'
import type { FilledLesson, Lesson, OtherSize } from '../../lesson/lesson.ts'
import { bySize, findingsAt } from '../../lesson/sizes/findings.ts'
import { otherSizes, type SizePrint, sizePrints } from '../../lesson/sizes/offered.ts'
import { slug } from '../../publish/slug.ts'
import type { LessonWork } from './lesson-work.ts'
import type { WantedPrint } from './records.ts'

/** A lesson in one size and unit, with its prints on each paper in each theme. */
export interface WantedSize {
  readonly print: SizePrint
  readonly prints: readonly WantedPrint[]
}

/**
 * All prints of a lesson that the library asks for.
 *
 * @param own the lesson in its own size and unit.
 * @param name of the lesson's file, without its ending.
 */
export function wantedSizes(lesson: Lesson, own: FilledLesson, name: string, work: LessonWork): WantedSize[] {
  const taken = new Set<string>()
  const unique = (wish: string): string => {
    // Sizes that differ only in signs have the same letters.
    for (let i = 1; ; i++) {
      const one = i === 1 ? wish : `${wish}-${i}`
      if (taken.has(one)) continue
      taken.add(one)
      return one
    }
  }
  return printsOf(lesson, own, work).map((print) => ({
    print,
    prints: work.papers.flatMap((paper) =>
      work.themes.map(({ text: theme }): WantedPrint => {
        const words = [print.other?.text ?? '', print.unit, paper, theme].map(slug)
        const parts = [name, ...words].filter((word) => word !== '')
        return { name: unique(parts.join('-')), size: print.label, unit: print.unit, paper, theme }
      }),
    ),
  }))
}

function printsOf(lesson: Lesson, own: FilledLesson, { sizes, units }: LessonWork): SizePrint[] {
  const more = sizes.more.map((text): OtherSize => ({ text, size: readSize(text), place: start }))
  const offered = new Set(own.frontMatter.sizes)
  const others = otherSizes(own, more).filter((other) => sizes.offered || !offered.has(other))
  const inUnits = [...new Set(units.map((unit): Unit => (unit === 'own' ? own.frontMatter.units : unit)))]
  const prints = sizePrints(lesson, own, others, inUnits)
  return sizes.own ? prints : prints.filter(({ other }) => other)
}

const start = { line: 1, column: 1 }

/** What is found in a lesson: in its own print, and in each other one what is wrong there and not in its own. */
export function findingsOf(lesson: Lesson, own: FilledLesson, wanted: readonly WantedSize[]) {
  if (hasErrors(own.findings)) return own.findings
  const prints = wanted.map(({ print }) => print)
  return [...own.findings, ...bySize(prints).flatMap((some) => findingsAt(lesson, own, some, prints))]
}
