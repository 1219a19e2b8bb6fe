import type { Candidate } from './candidates.ts'
import type { Literal } from './literal.ts'
import { ownerFit } from './owner-fit.ts'
import { partFit } from './parts.ts'
import type { Passage } from './passages.ts'
import { type Naming, saidAround } from './propose.ts'
import { unrelated } from './unrelated.ts'

/** A name whose value the words ask for, and the number says something else. */
export interface Mistake {
  readonly candidate: Candidate
  /** Whether width and height are only the other way round. */
  readonly turned: boolean
}

/** Words that say how large something is to be made. */
const making = /\b(?:cut|trim|measures?|make|makes|is|are|size|square|score|mark)\b/

/**
 * What a number should have been: the words speak of a piece and ask for a measure of it, but the value is another, if
 * not far off. Only asked of a number that nothing has the value of.
 */
export function mistakeIn(literal: Literal, index: number, naming: Naming): Mistake | undefined {
  if (literal.kind === 'range' || literal.kind === 'sheet') return undefined
  const said = saidAround(literal, index, naming.passages)
  const isCell = naming.passages[index]?.sentence.kind === 'cell'
  if (unrelated(literal, said) || (!isCell && !making.test(said.sentence))) return undefined
  if (areTwo(literal, naming.passages[index])) return undefined
  const least = literal.kind === 'length' ? 0.95 : 0.5
  const [best] = naming.candidates
    .filter(
      ({ kind, lengths, part }) =>
        kind === literal.kind && lengths.length === literal.lengths.length && !/^border|\.\d+$/.test(part),
    )
    .map((candidate) => ({
      candidate,
      fit: fitBefore(candidate, literal, index, naming),
      part: partFit(candidate.part, said),
      far: farthest(literal, candidate),
      turned: isTurned(literal, candidate),
    }))
    .filter(
      ({ fit, part, far, turned }) =>
        fit >= (literal.kind === 'length' ? 0.65 : 0.45) && part >= least && (far < 0.25 || turned),
    )
    .sort((a, b) => b.fit + b.part - (a.fit + a.part) || a.far - b.far)
  return best && { candidate: best.candidate, turned: best.turned }
}

/** Two things right before the number, "the leg and the floor": nobody knows which of them it is of. */
function areTwo(literal: Literal, passage: Passage | undefined): boolean {
  const [last, other] = (passage?.spoken ?? []).filter(({ end }) => end <= literal.start).toReversed()
  const between = last && other ? passage?.sentence.words.slice(other.end, last.start) : undefined
  return between !== undefined && /^,? (?:and|or|&) (?:the )?$/i.test(between)
}

/** What is only spoken of behind a number is seldom what it was written for. */
function fitBefore(candidate: Candidate, literal: Literal, index: number, naming: Naming): number {
  const { fit, behind } = ownerFit(candidate, literal, index, naming.passages)
  return behind ? 0 : fit
}

/** How far the worst of the lengths is from what it should be, as a share of that. */
const farthest = (literal: Literal, { lengths }: Candidate): number =>
  Math.max(
    ...literal.lengths.map((length, i) => {
      const right = lengths[i]
      return right ? Math.abs(length.div(right).valueOf() - 1) : 1
    }),
  )

const isTurned = ({ kind, lengths: [w, h] }: Literal, { lengths: [width, height] }: Candidate): boolean =>
  kind === 'size' &&
  w !== undefined &&
  h !== undefined &&
  height?.equals(w) === true &&
  width?.equals(h) === true
