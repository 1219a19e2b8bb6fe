import type { Drying, FrontMatter } from '../lesson/lesson.ts'

/** Who a lesson is for. */
export const levelWords: Readonly<Record<FrontMatter['level'], string>> = {
  beginner: 'For beginners',
  improver: 'For improvers',
  advanced: 'For practised hands',
}

/**
 * What a lesson takes, and the class that it is taught in: `about 1 h 10 min, in a class of 1 h 30 min`.
 *
 * @param minutes of all its steps; 0 when none says.
 */
export function timeText(minutes: number, ofClass: number | undefined): string | null {
  const whole = ofClass === undefined ? [] : [`a class of ${minutesText(ofClass)}`]
  if (minutes > 0) return [`about ${aboutText(minutes)}`, ...whole].join(', in ')
  return whole[0] ?? null
}

/** The time of a whole lesson: nobody keeps it to the minute. */
const aboutText = (minutes: number): string =>
  minutesText(minutes > 20 ? Math.ceil(minutes / 5) * 5 : minutes)

/** A time as it is said: `5 min`, `1 h 10 min`. Kept on one line. */
export function minutesText(minutes: number): string {
  const whole = Math.round(minutes)
  const [hours, rest] = [Math.floor(whole / 60), whole % 60]
  if (minutes < 1) return '1\u00a0min'
  const parts = [...(hours > 0 ? [`${hours}\u00a0h`] : []), ...(rest > 0 ? [`${rest}\u00a0min`] : [])]
  return parts.join('\u00a0')
}

/** How long something dries, and what waits for it. */
export const dryingText = ({ minutes, before }: Drying): string =>
  `Dries ${minutesText(minutes)}${before === undefined ? '' : ` before step\u00a0${before}`}.`
