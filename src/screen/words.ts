/** What the page says while it runs. Times stand in it as `{time}`, and the like. */
export interface ScreenWords {
  /** `{time} left`, `{time} over`, `{time} at this step` */
  readonly left: string
  readonly over: string
  readonly atStep: string
  /** `{gone} gone`, `{gone} gone, {left} to go` */
  readonly gone: string
  readonly goneToGo: string
  /** `Step {step} is dry in {time}` */
  readonly dryIn: string
  readonly clockStarts: string
  readonly pause: string
  readonly goOn: string
  /** `{minutes} min`, `{hours} h`, `{hours} h {minutes} min` */
  readonly minutes: string
  readonly hours: string
  readonly hoursMinutes: string
}

/** A phrase with its values put in. */
export const withValues = (phrase: string, values: Readonly<Record<string, string | number>>): string =>
  phrase.replace(/\{(\w+)\}/g, (all, name: string) => String(values[name] ?? all))

/** A time as a clock counts it: `3:07`, `1:02:07`. Begun seconds count. */
export function countText(milliseconds: number): string {
  const all = Math.ceil(milliseconds / 1000 - 1e-6)
  const two = (n: number): string => String(n).padStart(2, '0')
  const [hours, minutes, seconds] = [Math.floor(all / 3600), Math.floor(all / 60) % 60, all % 60]
  return hours > 0 ? `${hours}:${two(minutes)}:${two(seconds)}` : `${minutes}:${two(seconds)}`
}

/** A time as it is said: `48 min`, `1 h 5 min`. Begun minutes count. */
export function minutesText(milliseconds: number, words: ScreenWords): string {
  const all = Math.ceil(milliseconds / 60_000 - 1e-6)
  const [hours, minutes] = [Math.floor(all / 60), all % 60]
  const phrase = hours === 0 ? words.minutes : minutes === 0 ? words.hours : words.hoursMinutes
  return withValues(phrase, { hours, minutes })
}

/** `3:07 left`, `0:45 over`; how long the step has taken where it says no time. */
export function stepTime(left: number | undefined, spent: number, words: ScreenWords): string {
  if (left === undefined) return withValues(words.atStep, { time: countText(spent) })
  return withValues(left >= 0 ? words.left : words.over, { time: countText(Math.abs(left)) })
}

/** `22 min gone, 48 min to go`; full minutes count as gone. */
export function lessonTime(gone: number, left: number | undefined, words: ScreenWords): string {
  const said = minutesText(Math.floor(gone / 60_000) * 60_000, words)
  return left === undefined
    ? withValues(words.gone, { gone: said })
    : withValues(words.goneToGo, { gone: said, left: minutesText(left, words) })
}
