import type { Box } from '../fit/cutting/boxes.ts'
import { atMost, countsIn } from './choice.ts'
import type { Pattern } from './problem.ts'

/** The patterns found so far, each once. */
export interface Pool {
  readonly patterns: readonly Pattern[]
  /** Adds what the box holds of the wanted pieces, if it is new. Undefined when it holds none of them. */
  add(shape: number, box: Box | undefined, counts: readonly number[]): Pattern | undefined
}

export function newPool(): Pool {
  const patterns: Pattern[] = []
  const known = new Map<string, Pattern>()
  return {
    patterns,
    add: (shape, box, counts) => {
      const kept = box && atMost(box, counts)
      if (!kept) return undefined
      const pattern = { shape, box: kept, counts: countsIn(kept, counts.length) }
      const key = `${shape}: ${pattern.counts}`
      const before = known.get(key)
      if (before) return before
      known.set(key, pattern)
      patterns.push(pattern)
      return pattern
    },
  }
}
