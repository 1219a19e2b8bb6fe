import type { Draft, Drafts } from './drafts.ts'

/**
 * Drafts in the database, and on the small shelf what had to be written while the page was going, when the database
 * may not have got to the end. The newer one of the two counts.
 */
export function bothDrafts(large: Drafts, small: Drafts): Drafts {
  return {
    ...large,
    async get(lesson) {
      return newer(await large.get(lesson), await small.get(lesson))
    },
    async put(draft) {
      let written: boolean
      try {
        written = await large.put(draft)
      } catch {
        // Full, or closed by the browser: the small shelf has room of its own, or fails and says so.
        return small.put(draft)
      }
      const left = await small.get(draft.lesson)
      if (written && left && newer(left, draft) === draft) await small.drop(draft.lesson)
      return written
    },
    putNow(draft) {
      small.putNow(draft)
      large.putNow(draft)
    },
    async drop(lesson) {
      await large.drop(lesson)
      await small.drop(lesson)
    },
    async all() {
      const found = new Map<string, Draft>()
      for (const draft of [...(await large.all()), ...(await small.all())])
        found.set(draft.lesson, newer(found.get(draft.lesson), draft) ?? draft)
      return [...found.values()].sort((a, b) => b.changed - a.changed)
    },
  }
}

/** The one of the later turn, or, within a turn, of the later time; the second one when they are as old. */
function newer(one: Draft | undefined, other: Draft | undefined): Draft | undefined {
  if (!one || !other) return one ?? other
  if (one.turn !== other.turn) return one.turn > other.turn ? one : other
  return one.changed > other.changed ? one : other
}
