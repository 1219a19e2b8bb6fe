import { isOnGrid, nearest, usualGrid } from '../../length/grid.ts'
import type { Unit } from '../../length/length.ts'
import { type Agreement, agreement, missOf } from './agreement.ts'
import type { Candidate } from './candidates.ts'
import { type Literal, systemOf } from './literal.ts'
import { type OwnerFit, ownerFit } from './owner-fit.ts'
import { partFit, type Said } from './parts.ts'
import type { Passage } from './passages.ts'
import type { Proposal } from './proposal.ts'
import { isTwin } from './twins.ts'
import { unrelated } from './unrelated.ts'

/** What a number is named by: the cards' names, and the words round it. */
export interface Naming {
  readonly candidates: readonly Candidate[]
  readonly passages: readonly Passage[]
  /** The unit of the lesson. */
  readonly unit: Unit
  /** Whether all of the text is written in the other unit: then a number that a hand has rounded is as good as exact. */
  readonly foreign: boolean
}

interface Rated {
  readonly candidate: Candidate
  readonly agrees: Agreement
  readonly owner: OwnerFit
  readonly part: number
  readonly score: number
}

/** The name that a literal of a passage probably means, if the words and the value together say so. */
export function propose(literal: Literal, index: number, naming: Naming): Proposal | undefined {
  const said = saidAround(literal, index, naming.passages)
  const other = unrelated(literal, said)
  const rated = naming.candidates
    .flatMap((candidate): Rated[] => {
      const agrees = agreement(literal, candidate)
      if (!agrees) return []
      // Foam is bought as high as it is to raise something: nothing else has the measure of what is bought.
      if (other !== undefined && !(other === 'goods' && candidate.part === 'raise')) return []
      return [rate(candidate, agrees, literal, index, said, naming)]
    })
    .filter(({ part, owner }) => part > -0.5 && (owner.fit > 0 || literal.kind !== 'length'))
    .sort((a, b) => b.score - a.score || missOf(literal, a.candidate) - missOf(literal, b.candidate))
  for (const best of rated) {
    const confidence = confidenceIn(best, rated, literal, naming)
    if (confidence) return proposalFor(best, confidence, literal, naming)
  }
  return undefined
}

function proposalFor(
  best: Rated,
  confidence: Proposal['confidence'],
  literal: Literal,
  naming: Naming,
): Proposal {
  // What the lesson's ruler has no mark for keeps its own unit: foam 2 mm high is bought by that.
  const offMarks = best.candidate.lengths.some((length) => !isOnGrid(length, best.candidate.card.grid))
  const foreign = systemOf(literal) !== naming.unit && (!naming.foreign || offMarks)
  return {
    candidate: best.candidate,
    confidence,
    agreement: best.agrees,
    reason: reasonFor(best),
    ...(foreign && { as: systemOf(literal) }),
  }
}

/** The words round a literal. Another number before it ends what they say of it, but not the same in another unit. */
export function saidAround(literal: Literal, index: number, passages: readonly Passage[]): Said {
  const { sentence, literals = [] } = passages[index] ?? {}
  const words = (sentence?.words ?? '').toLowerCase()
  const last = literals.filter(({ end }) => end <= literal.start).at(-1)
  const next = literals.find(({ start }) => start >= literal.end)
  const twin = next && isTwin(literal, next, words) ? next : undefined
  const from = twin ? twin.end + 1 : literal.end
  const following = literals.find(({ start }) => start >= from)
  const previous = passages[index - 1]?.sentence
  const goesOn =
    previous?.step === sentence?.step && /\b(?:it|its|they|them|their|each|both|this)\b/.test(words)
  return {
    before: words.slice(last?.end ?? 0, literal.start),
    behind: words.slice(from, following?.start ?? words.length),
    sentence: words,
    earlier: goesOn ? (previous?.words ?? '').toLowerCase() : '',
  }
}

function rate(
  candidate: Candidate,
  agrees: Agreement,
  literal: Literal,
  index: number,
  said: Said,
  { passages, candidates: all }: Naming,
): Rated {
  const owner = ownerFit(candidate, literal, index, passages)
  const said_ = partFit(candidate.part, said)
  const part = said_ === 0 && isOnlySide(candidate, all) ? 0.45 : said_
  const simple = 0.05 * candidate.path.split('.').length + 0.002 * candidate.path.length
  const score = 2 * owner.fit + part + (agrees === 'exact' ? 0.5 : 0) - simple
  return { candidate, agrees, owner, part, score }
}

/** Whether the other side of the piece has another length, so that the value alone says which side is meant. */
function isOnlySide({ card, owner, part, lengths: [length] }: Candidate, all: readonly Candidate[]): boolean {
  const other = { width: 'height', height: 'width' }[part]
  if (other === undefined || !length) return false
  const side = all.find((one) => one.card === card && one.owner === owner && one.part === other)
  return side?.lengths[0]?.equals(length) === false
}

/** Parts that are the same by what they are: the four borders, or the legs on either side. */
const family = ({ part }: Candidate): string =>
  part
    .replace(/^border\..*/, 'border')
    .replace(/^(?:size|sheet)$/, 'size')
    .replace(/^(?:scores|uprights|levels)$/, 'scores')
const akin = (a: Candidate, b: Candidate): boolean =>
  a.owner === b.owner
    ? family(a) === family(b) || a.part.startsWith(`${b.part}.`) || b.part.startsWith(`${a.part}.`)
    : sharesEnding(a, b)
/** `leg`, `left leg.width` and `right leg.width` are always alike. */
const sharesEnding = (a: Candidate, b: Candidate): boolean =>
  a.owner.split(' ').at(-1) === b.owner.split(' ').at(-1) &&
  (a.part === b.part || a.part === '' || b.part === '')

function confidenceIn(
  best: Rated,
  rated: readonly Rated[],
  literal: Literal,
  naming: Naming,
): Proposal['confidence'] | undefined {
  const rivals = rated.filter(({ candidate }) => !akin(candidate, best.candidate))
  const rival = rivals[0]
  const clear = rival === undefined || best.score - rival.score > 0.35
  const exact =
    best.agrees === 'exact' ||
    (best.agrees === 'rounded' && naming.foreign) ||
    printsAs(literal, best.candidate, naming)
  const { fit } = best.owner
  if (literal.kind === 'sheet') return fit >= 0.45 ? 'likely' : undefined
  if (literal.kind === 'length') {
    if (exact && clear && fit >= 0.6 && best.part >= 0.6) return 'sure'
    return fit >= 0.4 && best.part >= 0.4 ? 'likely' : undefined
  }
  // Two or more numbers that all agree with one name alone need fewer words.
  if (exact && best.part >= 0.5 && (rivals.length === 0 ? fit >= 0.35 : clear && fit >= 0.6)) return 'sure'
  return best.part >= 0.4 && (fit >= 0.35 || rivals.length === 0) ? 'likely' : undefined
}

/** Whether a name printed in the other unit, on its ruler, says just what stands there: `{base.size as mm}`. */
function printsAs(literal: Literal, { lengths }: Candidate, { unit }: Naming): boolean {
  const system = systemOf(literal)
  return (
    system !== unit &&
    literal.lengths.every((length, i) => nearest(lengths[i] ?? length, usualGrid[system]).equals(length))
  )
}

function reasonFor({ agrees, owner }: Rated): string {
  const value =
    agrees === 'exact' ? 'the value is the same' : 'the value is the same as near as a hand writes it'
  return owner.reason === ''
    ? `${value}, and nothing else of the card has it`
    : `${owner.reason}, and ${value}`
}
