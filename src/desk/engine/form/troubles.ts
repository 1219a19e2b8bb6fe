import type { Finding } from '../../../length/finding.ts'
import type { Span } from '../engine.ts'
import type { Trouble } from '../form.ts'

/** What was found in a card block, to be told at its fields. Each finding is told once, by whoever asks for it first. */
export interface Troubles {
  /** Those that begin within a stretch of the text. */
  take(span: Partial<Span>): Trouble[]
}

/** @param block the stretch of the block, with the line of its fence. */
export function troublesIn(findings: readonly Finding[], block: Span): Troubles {
  let left = findings.filter(({ place }) => isWithin(place?.offset, block))
  return {
    take({ from, to }) {
      if (from === undefined || to === undefined) return []
      const own = left.filter(({ place }) => isWithin(place?.offset, { from, to }))
      left = left.filter((finding) => !own.includes(finding))
      return own.map(told)
    },
  }
}

const isWithin = (at: number | undefined, { from, to }: Span): boolean =>
  at !== undefined && at >= from && at <= to

export const told = ({ message, suggestion, severity, place }: Finding): Trouble => ({
  message,
  severity,
  ...(suggestion !== undefined && { suggestion }),
  ...(place?.offset !== undefined && { at: place.offset }),
})
