/** So many at a time, in the order in which they come. */
export interface Turns {
  /** Comes back when it is one's turn. */
  readonly take: () => Promise<void>
  readonly give: () => void
}

export function makeTurns(most: number): Turns {
  const waiting: (() => void)[] = []
  let free = most
  return {
    async take() {
      if (free > 0) free--
      else await new Promise<void>((go) => waiting.push(go))
    },
    give() {
      const next = waiting.shift()
      if (next) next()
      else free++
    },
  }
}
