import type { Nodes } from 'mdast'
import { visit } from 'unist-util-visit'
import type { Finding } from '../../length/finding.ts'
import { listOf } from '../../length/finding.ts'
import type { FilledLesson } from '../../lesson/lesson.ts'
import { plainText } from '../../lesson/plain-text.ts'
import { atOnce, type ClassFile, type Pause } from './class-file.ts'
import { type Clock, clockText } from './clock.ts'
import { classTitle, type Taught } from './taught.ts'

/** A line of the run sheet. */
export interface Slot {
  readonly from: Clock
  readonly minutes: number
  readonly what: 'welcome' | 'step' | 'break' | 'clearing'
  /** A step's first sentence, or the name of a break. */
  readonly words: string
  readonly step?: number
  readonly stage?: string
  readonly lesson?: string
}

/** What a class does from minute to minute. */
export interface RunSheet {
  readonly title: string
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
  readonly ahead: readonly { readonly lesson: string; readonly step?: number; readonly words: string }[]
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
  const groups = atOnce(file) ? all.map((lesson) => [lesson]) : [all]
  const courses = groups.map((group) => {
    const slots = slotsOf(group, times, times.start ?? usualStart)
    const last = slots.at(-1)
    return {
      title: titlesOf(group),
      slots,
      finish: last ? last.from + last.minutes : (times.start ?? usualStart),
    }
  })
  const end = times.end ?? endOf(file, all)
  const finish = Math.max(...courses.map((course) => course.finish))
  return {
    title: classTitle(file, lessons),
    courses,
    ...(end !== undefined && { end }),
    over: end === undefined ? 0 : Math.max(0, finish - end),
    ahead: all.flatMap(aheadIn),
    findings: [...all.flatMap(untimed), ...outside(times.breaks, times.start ?? usualStart, finish)],
  }
}

const titlesOf = (lessons: readonly FilledLesson[]): string =>
  listOf(lessons.map(({ frontMatter }) => frontMatter.title))

/** The end that follows from how long the lessons say that their class is. */
function endOf({ times }: ClassFile, lessons: readonly FilledLesson[]): Clock | undefined {
  const [only] = lessons
  const minutes = lessons.length === 1 ? only?.frontMatter.time?.minutes : undefined
  return minutes === undefined ? undefined : (times.start ?? usualStart) + minutes
}

function slotsOf(lessons: readonly FilledLesson[], times: ClassFile['times'], start: Clock): Slot[] {
  const slots: Slot[] = []
  let now = start
  const put = (slot: Omit<Slot, 'from'>): void => {
    slots.push({ from: now, ...slot })
    now += slot.minutes
  }
  const pauses = times.breaks.filter(({ at }) => at >= start)
  const pausesBy = (time: Clock): Pause[] => pauses.splice(0, pauses.filter(({ at }) => at <= time).length)
  const rest = (pause: Pause): void => put({ minutes: pause.minutes, what: 'break', words: pause.name })
  if (times.welcome > 0) put({ minutes: times.welcome, what: 'welcome', words: 'Welcome and what we make' })
  for (const lesson of lessons) {
    const texts = sentencesOf(lesson)
    for (const { number, minutes = 0, stage } of lesson.steps) {
      for (const pause of pausesBy(now + minutes / 2)) rest(pause)
      put({
        minutes,
        what: 'step',
        words: texts.get(number) ?? '',
        step: number,
        ...(stage !== undefined && { stage }),
        lesson: lesson.frontMatter.title,
      })
    }
  }
  // A break makes the class longer, and the next one may come before it is over then.
  for (let due = pausesBy(now + times.clearing); due.length > 0; due = pausesBy(now + times.clearing))
    for (const pause of due) rest(pause)
  if (times.clearing > 0) put({ minutes: times.clearing, what: 'clearing', words: 'Clear up' })
  return slots
}

/** The first sentence of each step. */
function sentencesOf({ tree }: FilledLesson): Map<number, string> {
  const found = new Map<number, string>()
  visit(tree, 'listItem', ({ data, children }) => {
    const [first] = children
    if (data?.step === undefined || !first) return
    const text = oneLine(plainText(first))
    found.set(data.step, /^.*?[.!?](?=\s|$)/.exec(text)?.[0] ?? text)
  })
  return found
}

/** What stands in `:::ahead`, with the step that it belongs to. */
function aheadIn({ tree, frontMatter }: FilledLesson): RunSheet['ahead'] {
  const found: { lesson: string; step?: number; words: string }[] = []
  const walk = (node: Nodes, step: number | undefined): void => {
    const own = node.type === 'listItem' ? (node.data?.step ?? step) : step
    if (node.type === 'callout' && node.kind === 'ahead')
      found.push({
        lesson: frontMatter.title,
        ...(own !== undefined && { step: own }),
        words: oneLine(node.children.map(plainText).join(' ')),
      })
    else if ('children' in node) for (const child of node.children) walk(child, own)
  }
  walk(tree, undefined)
  return found
}

const oneLine = (text: string): string => text.replace(/\s+/g, ' ').trim()

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
