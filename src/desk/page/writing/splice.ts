import type { Edit } from '../../engine/engine.ts'

/** The one change that makes a text of another: what both begin and end with stays. Undefined when they are the same. */
export function difference(before: string, after: string): Edit | undefined {
  if (before === after) return undefined
  const most = Math.min(before.length, after.length)
  let start = 0
  while (start < most && before[start] === after[start]) start++
  let end = 0
  while (end < most - start && before[before.length - 1 - end] === after[after.length - 1 - end]) end++
  return { from: start, to: before.length - end, insert: after.slice(start, after.length - end) }
}
