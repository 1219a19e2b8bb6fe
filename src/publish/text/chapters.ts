import type { FilledLesson } from '../../lesson/lesson.ts'
import { stepNames } from '../../lesson/step-names.ts'

/** Where a chapter of a film begins. */
export interface Chapter {
  /** From the beginning, in whole seconds. */
  readonly seconds: number
  /** `0:00`, `1:05:30`. */
  readonly time: string
  readonly name: string
  readonly step: number
}

/**
 * Chapters are at least so many seconds long, and the first begins at 0:00: what places that show films ask for. Common
 * practice, no source.
 */
const shortest = 10

/**
 * Chapters from the minutes of the steps, one after the other: a film does not wait for what dries. A step that says no
 * minutes, or that would make a chapter too short, belongs to the chapter before it.
 *
 * @returns none when no step says its minutes.
 */
export function chaptersOf({
  steps,
  tree,
  wording,
}: Pick<FilledLesson, 'steps' | 'tree' | 'wording'>): Chapter[] {
  if (steps.every(({ minutes }) => minutes === undefined)) return []
  const names = stepNames(tree, wording)
  const chapters: Chapter[] = []
  let now = 0
  for (const { number, minutes = 0 } of steps) {
    const seconds = Math.round(now * 60)
    const before = chapters.at(-1)
    const long = minutes * 60 >= shortest
    if (!before || (long && seconds - before.seconds >= shortest))
      chapters.push({
        seconds,
        time: timeText(seconds),
        name: names.get(number) ?? wording.say('handout.step', { step: number }),
        step: number,
      })
    now += minutes
  }
  return chapters
}

/** `0:00`, `12:30`, `1:05:30`. */
export function timeText(seconds: number): string {
  const two = (n: number): string => String(n).padStart(2, '0')
  const [hours, minutes, rest] = [Math.floor(seconds / 3600), Math.floor(seconds / 60) % 60, seconds % 60]
  return hours > 0 ? `${hours}:${two(minutes)}:${two(rest)}` : `${minutes}:${two(rest)}`
}
