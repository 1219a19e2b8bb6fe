import { groupBy } from '../../length/group-by.ts'
import { count, type Listing, type Section, withoutEmptyColumns, words } from '../listing.ts'
import { clockText } from './clock.ts'
import type { RunSheet } from './run-sheet.ts'
import { type Slot, slotWords } from './slots.ts'

/** A run sheet as tables: what to have ready, then the class by the clock. */
export function runSheetListing({ title, courses, end, over, ahead }: RunSheet): Listing {
  const several = courses.length > 1
  return {
    title: `Run sheet: ${title}`,
    intro: finishWords({ courses, ...(end !== undefined && { end }), over }),
    sections: [
      ...(ahead.length > 0 ? [aheadSection(ahead)] : []),
      ...courses.flatMap((course) => courseSections(course, several)),
    ],
  }
}

/** `It ends at 12:25, 5 minutes before 12:30.` */
function finishWords({ courses, end, over }: Pick<RunSheet, 'courses' | 'end' | 'over'>): string {
  const finish = Math.max(...courses.map((course) => course.finish))
  if (end === undefined) return `It ends at ${clockText(finish)}.`
  if (over > 0) return `It ends at ${clockText(finish)}, ${minutes(over)} after ${clockText(end)}: too long.`
  const left = end - finish
  return left === 0
    ? `It ends at ${clockText(finish)}, as it should.`
    : `It ends at ${clockText(finish)}, ${minutes(left)} before ${clockText(end)}.`
}

const minutes = (n: number): string => `${n} ${n === 1 ? 'minute' : 'minutes'}`

function aheadSection(ahead: RunSheet['ahead']): Section {
  const several = new Set(ahead.map(({ lesson }) => lesson)).size > 1
  return withoutEmptyColumns({
    heading: 'Before the class',
    columns: [words('what to have ready'), count('for step'), words('lesson')],
    rows: ahead.map(({ words: what, step, lesson }) => [
      what,
      step === undefined ? '' : String(step),
      several ? lesson : '',
    ]),
  })
}

/** A table for each lesson; what belongs to none stands with the lesson before it, or the first one. */
function courseSections({ title, slots }: RunSheet['courses'][number], several: boolean): Section[] {
  let current = slots.find(({ lesson }) => lesson !== undefined)?.lesson ?? title
  const owned = slots.map((slot) => {
    current = slot.lesson ?? current
    return { slot, owner: current }
  })
  const groups = groupBy(owned, ({ owner }) => owner)
  return [...groups].map(([owner, list]) =>
    withoutEmptyColumns({
      heading: groups.size > 1 || several ? owner : 'The class',
      columns: [words('at'), count('minutes'), count('step'), words('stage'), words('what')],
      rows: list.map(({ slot }, i) => rowOf(slot, list[i - 1]?.slot)),
    }),
  )
}

function rowOf(slot: Slot, before: Slot | undefined): string[] {
  const { from, minutes: long, step, stage } = slot
  return [
    clockText(from),
    String(long),
    step === undefined ? '' : String(step),
    // Said once, where it begins.
    stage === undefined || stage === before?.stage ? '' : stage,
    slotWords(slot),
  ]
}
