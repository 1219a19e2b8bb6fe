import type { Unit } from '../length/length.ts'
import type { Placed } from '../lesson/loose/edits.ts'
import type { LooseNumber } from '../lesson/loose/loose-numbers.ts'
import { measureOf } from '../lesson/loose/proposal.ts'
import { whyLeft } from '../lesson/loose/why-left.ts'

/** A plain number that has become a measure, for other programs. */
export const placedJson = ({ number: { place, words }, proposal }: Placed) => ({
  line: place.line,
  column: place.column,
  number: words,
  measure: measureOf(proposal),
  confidence: proposal.confidence,
  why: proposal.reason,
})

/** A plain number that was left as it is. */
export const leftJson = (number: LooseNumber, unit: Unit) => ({
  line: number.place.line,
  column: number.place.column,
  number: number.words,
  why: whyLeft(number, unit),
  ...(number.mistake && { mistake: number.mistake.candidate.path }),
})
