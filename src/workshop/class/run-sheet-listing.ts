import { groupBy } from '../../length/group-by.ts'
import type { Wording } from '../../wording/wording.ts'
import { count, type Listing, type Section, withoutEmptyColumns, words } from '../listing.ts'
import { timeText } from './clock.ts'
import { minutesText } from './minutes-text.ts'
import type { RunSheet } from './run-sheet.ts'
import { type Slot, slotWords } from './slots.ts'

/** A run sheet as tables: what to have ready, then the class by the clock. */
export function runSheetListing({ title, courses, end, over, ahead, wording }: RunSheet): Listing {
  const several = courses.length > 1
  return {
    title: wording.say('class.run-sheet-title', { title }),
    intro: finishWords({ courses, ...(end !== undefined && { end }), over, wording }),
    sections: [
      ...(ahead.length > 0 ? [aheadSection(ahead, wording)] : []),
      ...courses.flatMap((course) => courseSections(course, several, wording)),
    ],
  }
}

/** `It ends at 12:25, 5 minutes before 12:30.` */
function finishWords(run: Pick<RunSheet, 'courses' | 'end' | 'over' | 'wording'>): string {
  const { courses, end, over, wording } = run
  const { say } = wording
  const finish = Math.max(...courses.map((course) => course.finish))
  const at = timeText(finish, wording)
  if (end === undefined) return say('class.ends-at', { at })
  const due = timeText(end, wording)
  if (over > 0) return say('class.ends-late', { at, minutes: over, due })
  const left = end - finish
  return left === 0 ? say('class.ends-on-time', { at }) : say('class.ends-early', { at, minutes: left, due })
}

function aheadSection(ahead: RunSheet['ahead'], { say }: Wording): Section {
  const several = new Set(ahead.map(({ lesson }) => lesson)).size > 1
  return withoutEmptyColumns({
    heading: say('class.before'),
    columns: [words(say('class.what-to-have-ready')), count(say('class.for-step')), words(say('kit.lesson'))],
    rows: ahead.map(({ words: what, step, lesson }) => [
      what,
      step === undefined ? '' : String(step),
      several ? lesson : '',
    ]),
  })
}

/** A table for each lesson; what belongs to none stands with the lesson before it, or the first one. */
function courseSections(
  { title, slots }: RunSheet['courses'][number],
  several: boolean,
  wording: Wording,
): Section[] {
  const { say } = wording
  let current = slots.find(({ lesson }) => lesson !== undefined)?.lesson ?? title
  const owned = slots.map((slot) => {
    current = slot.lesson ?? current
    return { slot, owner: current }
  })
  const groups = groupBy(owned, ({ owner }) => owner)
  return [...groups].map(([owner, list]) =>
    withoutEmptyColumns({
      heading: groups.size > 1 || several ? owner : say('class.the-class'),
      columns: [
        words(say('class.at')),
        count(say('class.minutes')),
        count(say('class.step')),
        words(say('class.stage')),
        words(say('kit.what')),
      ],
      rows: list.map(({ slot }, i) => rowOf(slot, list[i - 1]?.slot, wording)),
    }),
  )
}

function rowOf(slot: Slot, before: Slot | undefined, wording: Wording): string[] {
  const { from, minutes: long, step, stage } = slot
  return [
    timeText(from, wording),
    minutesText(long, wording),
    step === undefined ? '' : String(step),
    // Said once, where it begins.
    stage === undefined || stage === before?.stage ? '' : stage,
    slotWords(slot, wording),
  ]
}
