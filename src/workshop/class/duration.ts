/** A time as it is said, to the whole minute upwards: `5 minutes`, `1 h 40 min`. */
export function durationText(minutes: number): string {
  const whole = Math.ceil(minutes - 1e-9)
  const [hours, rest] = [Math.floor(whole / 60), whole % 60]
  if (hours === 0) return `${rest} ${rest === 1 ? 'minute' : 'minutes'}`
  return rest === 0 ? `${hours} h` : `${hours} h ${rest} min`
}
