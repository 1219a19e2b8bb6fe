import type { Unit } from '../../length/length.ts'
import type { Agreement } from './agreement.ts'
import type { Candidate } from './candidates.ts'

/** The name that a plain number probably means. */
export interface Proposal {
  readonly candidate: Candidate
  /** A sure one may be put into the file without asking; a likely one wants to be looked at. */
  readonly confidence: 'sure' | 'likely'
  readonly agreement: Agreement
  /** The unit that it has to keep, when it is not the lesson's. */
  readonly as?: Unit
  /** Why, as a part of a sentence. */
  readonly reason: string
  /** The measure that does it if it is not a name alone. */
  readonly expression?: string
}

/** A proposal as it is written in the lesson. */
export const measureOf = ({ candidate, as, expression }: Proposal): string =>
  `{${expression ?? candidate.path}${as ? ` as ${as}` : ''}}`
