import type { Finding } from '../../length/finding.ts'
import { listOf } from '../../length/finding.ts'
import type { FilledLesson } from '../../lesson/lesson.ts'
import { type Wording, wordingOf } from '../../wording/wording.ts'
import { aheadIn, type ToHaveReady } from './ahead.ts'
import { atOnce, type ClassFile, type Pause } from './class-file.ts'
import { classWording } from './class-wording.ts'
import { type Clock, clockText } from './clock.ts'
import { durationText } from './duration.ts'
import { type Slot, slotsOf } from './slots.ts'
import { classTitle, type Taught } from './taught.ts'

/** What a class does from minute to minute. */
export interface RunSheet {
  readonly title: string
  readonly wording: Wording
  /** One list of slots; several when lessons are made at the same time. */
  readonly courses: readonly {
    readonly title: string
    readonly slots: readonly Slot[]
    readonly finish: Clock
  }[]
  /** When it should be over. */
  readonly end?: Clock
  /** By how many minutes the longest course goes beyond that; 0 when it does not, or nothing is said. */
  readonly over: number
  /** What lessons say to have ready before the class. */
  readonly ahead: readonly ToHaveReady[]
  readonly findings: readonly Finding[]
}

/** A class that does not say when it begins, begins at ten. */
const usualStart: Clock = 10 * 60

/**
 * Lays the steps of a class along the clock, one lesson after the other, or side by side when they are made at the same
 * time. A break comes at the end of a step: at the one that is nearest to its time.
 */
export function runSheet(file: ClassFile, lessons: readonly Taught[]): RunSheet {
  const { times } = file
  const all = lessons.map(({ lesson }) => lesson)
  const wording = classWording(file, lessons)
  const groups = atOnce(file) ? all.map((lesson) => [lesson]) : [all]
  const courses = groups.map((group) => {
    const slots = slotsOf(group, file, times.start ?? usualStart, wording)
    const last = slots.at(-1)
    return {
      title: wording.list(group.map(({ frontMatter }) => frontMatter.title)),
      slots,
      finish: last ? last.from + last.minutes : (times.start ?? usualStart),
    }
  })
  const end = times.end ?? endOf(file, all)
  const finish = Math.max(...courses.map((course) => course.finish))
  const over = end === undefined ? 0 : Math.max(0, finish - end)
  return {
    title: classTitle(file, lessons),
    wording,
    courses,
    ...(end !== undefined && { end }),
    over,
    ahead: all.flatMap(aheadIn),
    findings: [
      ...all.flatMap(untimed),
      ...tooLong(times, over, finish),
      ...outside(times.breaks, times.start ?? usualStart, finish),
    ],
  }
}

/** The end that follows from how long the lessons say that their class is. */
function endOf({ times }: ClassFile, lessons: readonly FilledLesson[]): Clock | undefined {
  const [only] = lessons
  const minutes = lessons.length === 1 ? only?.frontMatter.time?.minutes : undefined
  return minutes === undefined ? undefined : (times.start ?? usualStart) + minutes
}

/** The class goes on beyond the end that its file says; what a lesson says of its own time its own findings tell. */
function tooLong({ end, endPlace }: ClassFile['times'], over: number, finish: Clock): Finding[] {
  if (end === undefined || !endPlace || over === 0) return []
  const last = clockText(Math.ceil(finish))
  return [
    {
      rule: 'class-time',
      severity: 'warning',
      message: `The class goes on to ${last}, ${durationText(over, wordingOf('en-GB', 'mm'))} beyond its end`,
      suggestion: `Write \`end: ${last}\`, or do some of it before the class`,
      place: endPlace,
    },
  ]
}

function untimed({ steps, frontMatter }: FilledLesson): Finding[] {
  const without = steps.filter(({ minutes }) => minutes === undefined)
  if (without.length === 0) return []
  const numbers = listOf(without.map(({ number }) => String(number)))
  return [
    {
      rule: 'loose-time',
      severity: 'warning',
      message: `In “${frontMatter.title}” ${without.length === 1 ? `step ${numbers} has` : `steps ${numbers} have`} no time, so the class ends later than this says`,
      suggestion: 'Write `:minutes[5]` at the end of each step',
    },
  ]
}

/** Breaks that no class has, because it has not begun or is over. */
const outside = (breaks: readonly Pause[], start: Clock, finish: Clock): Finding[] =>
  breaks
    .filter(({ at }) => at < start || at > finish)
    .map(({ at, name, place }) => ({
      rule: 'break-outside',
      severity: 'warning',
      message: `At ${clockText(at)}, when \`${name}\` should be, the class ${at < start ? 'has not begun' : 'is over'}`,
      suggestion: `Choose a time from ${clockText(start)} to ${clockText(finish)}`,
      place,
    }))
