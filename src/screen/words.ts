/** A time as a clock counts it: `3:07`, `1:02:07`. Begun seconds count. */
export function countText(milliseconds: number): string {
  const all = Math.ceil(milliseconds / 1000 - 1e-6)
  const two = (n: number): string => String(n).padStart(2, '0')
  const [hours, minutes, seconds] = [Math.floor(all / 3600), Math.floor(all / 60) % 60, all % 60]
  return hours > 0 ? `${hours}:${two(minutes)}:${two(seconds)}` : `${minutes}:${two(seconds)}`
}

/** A time as it is said: `48 min`, `1 h 5 min`. Begun minutes count. */
export function minutesText(milliseconds: number): string {
  const all = Math.ceil(milliseconds / 60_000 - 1e-6)
  const [hours, minutes] = [Math.floor(all / 60), all % 60]
  if (hours === 0) return `${minutes} min`
  return minutes === 0 ? `${hours} h` : `${hours} h ${minutes} min`
}

/** `3:07 left`, `0:45 over`; how long the step has taken where it says no time. */
export function stepTime(left: number | undefined, spent: number): string {
  if (left === undefined) return `${countText(spent)} at this step`
  return left >= 0 ? `${countText(left)} left` : `${countText(-left)} over`
}

/** `22 min gone, 48 min to go`; full minutes count as gone. */
export function lessonTime(gone: number, left: number | undefined): string {
  const said = `${minutesText(Math.floor(gone / 60_000) * 60_000)} gone`
  return left === undefined ? said : `${said}, ${minutesText(left)} to go`
}
