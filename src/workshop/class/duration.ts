import type { Wording } from '../../wording/wording.ts'

/** A time as it is said, to the whole minute upwards: `5 minutes`, `1 h 40 min`. */
export function durationText(minutes: number, { say }: Wording): string {
  const whole = Math.ceil(minutes - 1e-9)
  const [hours, rest] = [Math.floor(whole / 60), whole % 60]
  if (hours === 0) return say('class.minutes-long', { minutes: rest })
  return rest === 0 ? say('class.hours', { hours }) : say('class.hours-minutes', { hours, minutes: rest })
}
