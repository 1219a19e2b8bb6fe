import type { CuttingPlan } from '../workshop/cutting/cutting.ts'
import { UsageError } from './problems.ts'

/** Ends a search for cutting plans when its time is over. It is asked, so it needs no pause in which to be told. */
export interface TimeLimit {
  readonly aborted: boolean
}

/** A time that begins now. */
export function timeLimit(seconds: number | undefined, now: () => number = Date.now): TimeLimit {
  const end = seconds === undefined ? Number.POSITIVE_INFINITY : now() + seconds * 1000
  return {
    get aborted() {
      return now() >= end
    },
  }
}

/** Reads how long something may take, in seconds: `10 s`, `2 min`, `30`. Throws UsageError. */
export function readSeconds(text: string): number {
  const [, number = '', unit = 's'] =
    /^(\d{1,5}(?:\.\d{1,3})?)\s*(s|secs?|seconds?|m|mins?|minutes?)?$/i.exec(text.trim()) ?? []
  const seconds = Number(number) * (/^m/i.test(unit) ? 60 : 1)
  if (number !== '' && seconds > 0) return seconds
  throw new UsageError(`\`${text.trim()}\` does not say how long it may take`, 'Write `10 s` or `2 min`')
}

/** What to say of plans whose search was ended: how good they are for certain; undefined when nothing better is possible. */
export function stoppedText({ plans, short }: Pick<CuttingPlan, 'plans' | 'short'>): string | undefined {
  const open = plans.filter(
    ({ proven, sheet, used, lowerBound }) => !proven && !sheet.offcut && used > lowerBound,
  )
  const told = open.map(({ stock, used, lowerBound }) => {
    const least =
      lowerBound > 0 ? `fewer than ${lowerBound} cannot be done` : 'how few would do is not known yet'
    return `  ${stock}: ${used} ${used === 1 ? 'sheet' : 'sheets'}; ${least}`
  })
  const missing = short.length > 0 ? ['  What it says cannot be cut may come out after a longer search'] : []
  const lines = [...told, ...missing]
  return lines.length === 0
    ? undefined
    : `The search was ended, and this is the best plan so far:\n${lines.join('\n')}\n`
}
