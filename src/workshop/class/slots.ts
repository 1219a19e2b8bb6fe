import { visit } from 'unist-util-visit'
import type { Drying, FilledLesson } from '../../lesson/lesson.ts'
import { plainText } from '../../lesson/plain-text.ts'
import type { Wording } from '../../wording/wording.ts'
import { type Beforehand, beforehandOf } from './beforehand.ts'
import type { ClassFile, Pause } from './class-file.ts'
import { type Clock, timeText } from './clock.ts'
import { oneLine } from './one-line.ts'

/** A line of the run sheet. */
export interface Slot {
  readonly from: Clock
  readonly minutes: number
  readonly what: 'welcome' | 'step' | 'wait' | 'break' | 'clearing'
  /** A step's first sentence, the name of a break, or what is waited for. */
  readonly words: string
  readonly step?: number
  readonly stage?: string
  readonly lesson?: string
  /** When what the step leaves is dry. */
  readonly dryAt?: Clock
  /** Whether all of the step, or some of it, is done before the class; all of it takes no time then. */
  readonly beforehand?: Beforehand
}

/** Something that lies to dry, and the step that needs it; behind the last step none does. */
interface Wet {
  readonly dryAt: Clock
  readonly before: number
  readonly words: string
}

/**
 * The steps of lessons one after the other along the clock. A break comes at the end of the step that is nearest to its
 * time. Where a step needs what is not dry yet, the class waits, and a break whose time comes before that is over is
 * taken meanwhile. What dries at the end of a lesson does so while the class goes on.
 */
export function slotsOf(
  lessons: readonly FilledLesson[],
  { times, prepare }: Pick<ClassFile, 'times' | 'prepare'>,
  start: Clock,
  wording: Wording,
): Slot[] {
  const slots: Slot[] = []
  let now = start
  const put = (slot: Omit<Slot, 'from'>): void => {
    slots.push({ from: now, ...slot })
    now += slot.minutes
  }
  const pauses = times.breaks.filter(({ at }) => at >= start)
  const pausesBy = (time: Clock): Pause[] => pauses.splice(0, pauses.filter(({ at }) => at <= time).length)
  const rest = (pause: Pause): void => put({ minutes: pause.minutes, what: 'break', words: pause.name })
  const wait = (wet: readonly Wet[], lesson?: string): void => {
    const [last] = wet.toSorted((a, b) => b.dryAt - a.dryAt)
    if (!last || last.dryAt <= now) return
    for (const pause of pausesBy(last.dryAt)) rest(pause)
    if (last.dryAt > now)
      put({
        minutes: last.dryAt - now,
        what: 'wait',
        words: last.words,
        ...(lesson !== undefined && { lesson }),
      })
  }
  if (times.welcome > 0) put({ minutes: times.welcome, what: 'welcome', words: wording.say('class.welcome') })
  const left: Wet[] = []
  for (const lesson of lessons) {
    const texts = sentencesOf(lesson)
    const { title } = lesson.frontMatter
    const wet: Wet[] = []
    for (const step of lesson.steps) {
      const { number, stage, drying } = step
      const beforehand = beforehandOf(step, prepare)
      const minutes = beforehand === 'all' ? 0 : (step.minutes ?? 0)
      wait(
        wet.filter(({ before }) => before <= number),
        title,
      )
      for (const pause of pausesBy(now + minutes / 2)) rest(pause)
      const dryAt = drying && beforehand !== 'all' ? now + minutes + drying.minutes : undefined
      put({
        minutes,
        what: 'step',
        words: texts.get(number) ?? '',
        step: number,
        ...(stage !== undefined && { stage }),
        lesson: title,
        ...(dryAt !== undefined && { dryAt }),
        ...(beforehand && { beforehand }),
      })
      if (drying && dryAt !== undefined)
        wet.push({
          dryAt,
          before: drying.before ?? Number.POSITIVE_INFINITY,
          words: waitWords(number, drying, dryAt, wording),
        })
    }
    left.push(...wet.filter(({ before }) => before === Number.POSITIVE_INFINITY))
  }
  // A break makes the class longer, and the next one may come before it is over then.
  for (let due = pausesBy(now + times.clearing); due.length > 0; due = pausesBy(now + times.clearing))
    for (const pause of due) rest(pause)
  if (times.clearing > 0)
    put({ minutes: times.clearing, what: 'clearing', words: wording.say('class.clear-up') })
  wait(left)
  return slots
}

/** `Wait until 11:20: the beam dries.` */
function waitWords(step: number, { of }: Drying, dryAt: Clock, wording: Wording): string {
  const { say, list, name } = wording
  const until = timeText(dryAt, wording)
  if (of.length === 0) return say('class.wait-for-step', { until, step })
  const pieces = list(of.map((piece) => say('class.the-piece', { piece: name(piece) })))
  return say('class.wait-for', { until, pieces, count: of.length })
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

/** What a slot is, in words: the step, when what it leaves is dry, and what of it is done already. */
export function slotWords({ words, dryAt, beforehand }: Slot, wording: Wording): string {
  const { say } = wording
  return [
    words,
    ...(dryAt === undefined ? [] : [say('class.dry-at', { at: timeText(dryAt, wording) })]),
    ...(beforehand === undefined ? [] : [say('class.beforehand', { done: beforehand.replaceAll(' ', '-') })]),
  ].join(' ')
}
