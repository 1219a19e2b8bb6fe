import { formatLength } from '../../length/format.ts'
import { type Length, minus, plus } from '../../length/length.ts'
import type { Candidate } from './candidates.ts'
import type { Literal } from './literal.ts'
import type { Proposal } from './proposal.ts'
import type { Naming } from './propose.ts'

const together = /\b(?:together|added up|in all|end to end|side by side|on top of each other|plus)\b/i
const more = /\b(?:wider|longer|higher|taller|deeper|larger|more) than\b/i

/**
 * A sum that a length may mean when no name by itself does and the words ask for one: "the legs together are 1 1/2 in",
 * or "5 5/8 in wide, 1/4 in wider than the backdrop". Never more than likely.
 */
export function sumFor(literal: Literal, index: number, naming: Naming): Proposal | undefined {
  const [length] = literal.lengths
  const { sentence, spoken = [], literals = [] } = naming.passages[index] ?? {}
  if (literal.kind !== 'length' || !length || !sentence) return undefined
  const owners = [...new Set(spoken.flatMap((one) => one.owners))]
  const lengths = naming.candidates.filter(
    ({ kind, part, owner }) =>
      kind === 'length' && /^(?:width|height)?$/.test(part) && owners.includes(owner),
  )
  if (together.test(sentence.words)) return twoOf(length, lengths)
  if (!more.test(sentence.words)) return undefined
  const added = literals
    .filter((other) => other !== literal && other.kind === 'length')
    .flatMap((one) => one.lengths)
  return onePlus(length, lengths, added, naming)
}

function twoOf(length: Length, lengths: readonly Candidate[]): Proposal | undefined {
  for (const [i, a] of lengths.entries())
    for (const b of lengths.slice(i + 1)) {
      const [x, y] = [a.lengths[0], b.lengths[0]]
      if (a.part !== b.part || a.owner === b.owner || !x || !y || !plus(x, y).equals(length)) continue
      return sum(a, `${a.path} + ${b.path}`, 'the words add two lengths up, and so do these')
    }
  return undefined
}

function onePlus(
  length: Length,
  lengths: readonly Candidate[],
  added: readonly Length[],
  { unit }: Naming,
): Proposal | undefined {
  for (const a of lengths) {
    const rest = minus(length, a.lengths[0] ?? length)
    if (rest.lte(0) || !added.some((one) => one.equals(rest))) continue
    return sum(
      a,
      `${a.path} + ${formatLength(rest, unit)}`,
      `it is as much longer than \`${a.owner}\` as the words say`,
    )
  }
  return undefined
}

const sum = (candidate: Candidate, expression: string, reason: string): Proposal => ({
  candidate,
  expression,
  reason,
  confidence: 'likely',
  agreement: 'exact',
})
