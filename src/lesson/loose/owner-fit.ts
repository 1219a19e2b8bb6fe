import type { Candidate } from './candidates.ts'
import type { Literal } from './literal.ts'
import type { Passage } from './passages.ts'
import type { Spoken } from './spoken.ts'

/** How far what is named is spoken of near a literal, from 0 to 1, and how to say so. */
export interface OwnerFit {
  readonly fit: number
  readonly reason: string
  /** Whether it is only spoken of after the literal. */
  readonly behind?: boolean
}

const none: OwnerFit = { fit: 0, reason: '' }
const said = ({ owner }: Candidate): string =>
  /^(?:closed|card)$/.test(owner) ? 'the shut card' : `\`${owner}\``
const isOf = ({ card, owner }: Candidate, spoken: Spoken): boolean =>
  spoken.card === card && spoken.owners.includes(owner)

/** How far back a sentence may look for what "it" is. */
const farthest = 4
const pronoun = /\b(?:it|its|them|they|their|each|both|this|these|one|ones|all)\b/i

/**
 * Whether the words near a literal speak of a candidate: before it in the sentence, or else behind it, or in a sentence
 * before it in the same step.
 */
export function ownerFit(
  candidate: Candidate,
  literal: Literal,
  index: number,
  passages: readonly Passage[],
): OwnerFit {
  const passage = passages[index]
  if (!passage) return none
  const { spoken, sentence } = passage
  const before = spoken.filter(({ end }) => end <= literal.start).toReversed()
  const rank = before.findIndex((one) => isOf(candidate, one))
  const nearest = before[rank]
  if (nearest) {
    const far = brokenBetween(sentence.words.slice(nearest.end, literal.start)) ? 0.15 : 0
    const fit = Math.max(0.3, [1, 0.7, 0.55][rank] ?? 0.4) - far
    return { fit, reason: `the sentence speaks of ${said(candidate)}` }
  }
  const behind = spoken.find((one) => one.start >= literal.end && isOf(candidate, one))
  if (behind) {
    const first = spoken.find(({ start }) => start >= literal.end) === behind
    const fit = before.length === 0 && first ? 0.7 : 0.45
    return { fit, reason: `${said(candidate)} stands behind it`, behind: true }
  }
  const earlier = earlierFit(candidate, index, passages, before.length === 0)
  const next = before.length === 0 && spoken.length === 0 ? passages[index + 1] : undefined
  // "Cut a piece 7 inches wide. This is the base."
  if (
    next &&
    earlier.fit < 0.7 &&
    names.test(next.sentence.words) &&
    next.spoken[0] &&
    isOf(candidate, next.spoken[0])
  )
    return { fit: 0.75, reason: `the next sentence says that it is ${said(candidate)}` }
  if (earlier.fit > 0) return earlier
  if (headingAbove(index, passages)?.spoken.some((one) => isOf(candidate, one)))
    return { fit: before.length === 0 ? 0.45 : 0.35, reason: `the heading speaks of ${said(candidate)}` }
  // Scores and folds are those of the base, and what is said of the whole is said of the shut card.
  if (/^base$/.test(candidate.owner) && /^(?:scores|valleys|mountains)/.test(candidate.part))
    return { fit: before.length === 0 ? 0.6 : 0.5, reason: 'the scores are those of `base`' }
  if (candidate.owner === 'closed' && before.length === 0 && sentence.step === undefined)
    return { fit: 0.5, reason: 'it is said of the whole card' }
  return none
}

function earlierFit(
  candidate: Candidate,
  index: number,
  passages: readonly Passage[],
  free: boolean,
): OwnerFit {
  const here = passages[index]?.sentence
  if (!here) return none
  const isCell = here.kind === 'cell'
  for (let back = 1; back <= farthest; back++) {
    const { sentence, spoken } = passages[index - back] ?? {}
    if (!sentence || !spoken) break
    const sameStep = sentence.step === here.step
    // A call-out or the first sentence of a step still looks at the step before, but less.
    if ((sentence.kind === 'cell') !== isCell || (!sameStep && back > 1)) break
    if (sentence.kind === 'heading' || sentence.kind === 'caption') continue
    const last = spoken.at(-1)
    const found = spoken.toReversed().findIndex((one) => isOf(candidate, one))
    if (found >= 0) {
      const points = pronoun.test(here.words) || isCell ? 0.1 : 0
      const base = isCell ? 0.8 : sameStep ? 0.65 : 0.45
      const fit = base + points - 0.1 * (back - 1) - 0.12 * Math.min(found, 2) - (free ? 0 : 0.2)
      const where = isCell ? 'the row' : sameStep ? 'the sentence before' : 'the step before'
      return { fit: Math.max(0.1, fit), reason: `${where} speaks of ${said(candidate)}` }
    }
    // In a table the nearest thing that is named is what the row is about.
    if (isCell && last) break
  }
  return none
}

const names = /^(?:this|that|it|these|those)(?: is| are|['’]s) /i

function headingAbove(index: number, passages: readonly Passage[]): Passage | undefined {
  for (let i = index - 1; i >= 0; i--) if (passages[i]?.sentence.kind === 'heading') return passages[i]
  return undefined
}

/** Whether another clause begins between what is spoken of and the number. */
const brokenBetween = (words: string): boolean => /[;.!?]\s|\b(?:then|but|while|so)\b/i.test(words)
