import type { Earlier } from './drafts.ts'

const minute = 60_000
const hour = 60 * minute
const day = 24 * hour

/** How long the stretches of time are of which one text each stays: short at first, then a day. */
const stretch = (age: number): number => {
  if (age < hour) return 5 * minute
  return age < day ? hour : day
}

/** Older ones go. */
const longest = 60 * day
/** As many stay of one lesson. */
const most = 30

/**
 * Which earlier texts of one lesson may go. The newest of each kind and stretch of time stays. Those put aside for another text
 * stay too, because they are the only copy.
 *
 * @param versions of one lesson, in any order.
 */
export function thinned(versions: readonly Omit<Earlier, 'text'>[], now: number): readonly number[] {
  const newestFirst = [...versions].sort((a, b) => b.changed - a.changed || b.id - a.id)
  const gone: number[] = []
  // Stretches begin at fixed times. Measured from the next newer text, each new one would push out the one before it.
  const filled = new Set<string>()
  let staying = 0
  for (const version of newestFirst) {
    const age = now - version.changed
    const length = stretch(age)
    const place = `${version.why} ${length} ${Math.floor(version.changed / length)}`
    const old = age > longest || staying >= most
    if (staying > 0 && (old || (filled.has(place) && version.why !== 'aside'))) gone.push(version.id)
    else {
      staying++
      filled.add(place)
    }
  }
  return gone
}
