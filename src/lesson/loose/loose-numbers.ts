import type { Card } from '../../card/card.ts'
import type { Place } from '../../length/finding.ts'
import type { Unit } from '../../length/length.ts'
import type { Named } from '../prose/named.ts'
import type { Sentence } from '../prose/sentence.ts'
import { candidatesOf } from './candidates.ts'
import { type Literal, systemOf } from './literal.ts'
import { type Mistake, mistakeIn } from './mistake.ts'
import { passagesOf } from './passages.ts'
import type { Proposal } from './proposal.ts'
import { type Naming, propose } from './propose.ts'
import { sumFor } from './sums.ts'
import { isTwin } from './twins.ts'

/** A plain number in the words of a lesson, with what it probably means. */
export interface LooseNumber {
  readonly literal: Literal
  /** As it stands in the words. */
  readonly words: string
  readonly sentence: Sentence
  readonly place: Place
  readonly proposal?: Proposal
  readonly mistake?: Mistake
}

/** What plain numbers are looked for in, and named by. */
export interface Reading {
  readonly sentences: readonly Sentence[]
  /** The cards in the lesson's own size and unit. */
  readonly cards: readonly Card[]
  readonly named: readonly Named[]
  /** Names of stocks and supplies: a number in one of them is a part of its name. */
  readonly stocks: readonly string[]
  readonly unit: Unit
  /** Whether a text that is written in the other unit throughout may go over to the lesson's. */
  readonly mayConvert?: boolean
}

/** Every plain number of a lesson that no name supplies, in the order of the file. */
export function looseNumbers({
  sentences,
  cards,
  named,
  stocks,
  unit,
  mayConvert = false,
}: Reading): LooseNumber[] {
  const passages = passagesOf(sentences, cards, named, stocks)
  const all = passages.flatMap(({ literals }) => literals).filter(({ kind }) => kind !== 'sheet')
  if (passages.every(({ literals }) => literals.length === 0)) return []
  const others = all.filter((literal) => systemOf(literal) !== unit)
  const foreign = mayConvert && all.length >= 5 && others.length > 0.6 * all.length
  const naming: Naming = { candidates: candidatesOf(cards), passages, unit, foreign }
  return passages.flatMap(({ sentence, literals }, index) => {
    const numbers: LooseNumber[] = []
    for (const literal of literals) {
      const before = numbers.at(-1)
      const twin = before && isTwin(before.literal, literal, sentence.words) ? before.proposal : undefined
      const named = twin
        ? [alike(literal, twin, sentence, unit)]
        : numbersFor(literal, index, naming, sentence)
      numbers.push(...named)
    }
    return numbers
  })
}

/** The same in the other unit. */
function alike(literal: Literal, proposal: Proposal, sentence: Sentence, unit: Unit): LooseNumber {
  const system = systemOf(literal)
  const { as: _, ...rest } = proposal
  const same = { ...rest, reason: 'it says the same in another unit', agreement: 'rounded' as const }
  return numberOf(literal, sentence, { proposal: system === unit ? same : { ...same, as: system } })
}

function numbersFor(literal: Literal, index: number, naming: Naming, sentence: Sentence): LooseNumber[] {
  const proposal = propose(literal, index, naming) ?? sumFor(literal, index, naming)
  if (proposal) return [numberOf(literal, sentence, { proposal })]
  // A sheet is a measure of the card only if the card has its size.
  if (literal.kind === 'sheet') return []
  const mistake = mistakeIn(literal, index, naming)
  if (mistake) return [numberOf(literal, sentence, { mistake })]
  if (literal.parts) return literal.parts.flatMap((part) => numbersFor(part, index, naming, sentence))
  return [numberOf(literal, sentence, {})]
}

const numberOf = (
  literal: Literal,
  sentence: Sentence,
  found: Pick<LooseNumber, 'proposal' | 'mistake'>,
): LooseNumber => ({
  literal,
  sentence,
  words: sentence.words.slice(literal.start, literal.end),
  place: sentence.place(literal.start, literal.end),
  ...found,
})
