/** The work that a search may still do, counted in steps and not in seconds, so that every machine finds the same. */
export interface Work {
  /** Steps done up to now. */
  readonly done: number
  /** Whether to come to an end. */
  readonly over: boolean
  spend(steps: number): void
  /** A part of what is left, for one way of looking. Its steps count here too. */
  share(part: number): Work
  /** Tells how far it is, and gives who waits for it a turn. */
  tell(used: number, lowerBound: number): Promise<void>
}

/** @param tell gets the share of all work that is done, 0 to 1. */
export function workOf(
  steps: number,
  tell: (used: number, lowerBound: number, spent: number) => unknown,
  signal?: Pick<AbortSignal, 'aborted'>,
): Work {
  let all = 0
  const within = (limit: number, parent?: Work): Work => {
    let done = 0
    const work: Work = {
      get done() {
        return done
      },
      get over() {
        return done >= limit || parent?.over === true || signal?.aborted === true
      },
      spend: (more) => {
        done += more
        if (parent) parent.spend(more)
        else all = done
      },
      share: (part) => within((limit - done) * part, work),
      tell: async (used, lowerBound) => {
        await tell(used, lowerBound, Math.min(1, all / steps))
      },
    }
    return work
  }
  return within(steps)
}
