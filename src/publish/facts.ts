import type { Drying } from '../lesson/lesson.ts'
import type { Wording } from '../wording/wording.ts'

/**
 * What a lesson takes, and the class that it is taught in: `about 1 h 10 min, in a class of 1 h 30 min`.
 *
 * @param minutes of all its steps; 0 when none says.
 */
export function timeText(minutes: number, ofClass: number | undefined, wording: Wording): string | null {
  const time = minutes > 0 ? aboutText(minutes, wording) : undefined
  const whole = ofClass === undefined ? undefined : minutesText(ofClass, wording)
  if (time !== undefined && whole !== undefined)
    return wording.say('handout.time-about-in-class', { time, whole })
  if (time !== undefined) return wording.say('handout.time-about', { time })
  return whole === undefined ? null : wording.say('handout.time-in-class', { whole })
}

/** The time of a whole lesson: nobody keeps it to the minute. */
const aboutText = (minutes: number, wording: Wording): string =>
  minutesText(minutes > 20 ? Math.ceil(minutes / 5) * 5 : minutes, wording)

/** A time as it is said: `5 min`, `1 h 10 min`. Kept on one line. */
export function minutesText(time: number, wording: Pick<Wording, 'say'>): string {
  const whole = Math.max(1, Math.round(time))
  const [hours, minutes] = [Math.floor(whole / 60), whole % 60]
  if (hours === 0) return wording.say('handout.minutes', { minutes })
  return minutes === 0
    ? wording.say('handout.hours', { hours })
    : wording.say('handout.hours-minutes', { hours, minutes })
}

/** How long something dries, and what waits for it. */
export function dryingText({ minutes, before }: Drying, wording: Wording): string {
  const time = minutesText(minutes, wording)
  return before === undefined
    ? wording.say('handout.dries', { time })
    : wording.say('handout.dries-before', { time, step: before })
}
