import type { Finding } from '../length/finding.ts'
import type { Rings } from './rings.ts'
import { sayLength, sayNames } from './say.ts'
import type { Section } from './section.ts'

/** Sums kept while looking for the smallest miss of one ring; far more than a card's lengths give. */
const mostSums = 20000

/** Why no closing exists: each ring that cannot close by itself, and by how much it misses at best. */
export function missesOf(section: Section, rings: Rings): Finding[] {
  const misses = rings.cycles.flatMap((cycle) => {
    const bars = barsOf(section, cycle)
    const miss = smallestSum(bars.map(({ length }) => length))
    return miss > 0 ? [{ cycle, bars, miss }] : []
  })
  if (misses.length === 0) return [together(section, rings)]
  return misses.map(({ cycle, bars, miss }): Finding => {
    const by = sayLength(Math.round(miss / Math.sqrt(section.norm)), section.model.perMm)
    return {
      rule: 'folds-flat',
      severity: 'error',
      message: `The ring of ${namesOf(section, cycle)} does not close when the card is shut: it misses by ${by}`,
      suggestion: cureOf(bars, miss, by),
    }
  })
}

/** The last bar that is a panel by itself, or else the last one, made longer or shorter: whichever closes the ring. */
function cureOf(bars: readonly Bar[], miss: number, by: string): string {
  const single = bars.filter(({ names }) => names.length === 1)
  const bar = (single.length > 0 ? single : bars).at(-1)
  const longer = smallestSum(bars.map((b) => (b === bar ? b.length + miss : b.length))) === 0
  return `Make ${sayNames(bar?.names.slice(0, 1) ?? [])} ${by} ${longer ? 'longer' : 'shorter'}`
}

/** What to say when rings close, but only while all their creases lie open. */
export function liesOpen(section: Section, rings: Rings): Finding {
  const cycle = rings.cycles[0] ?? []
  return {
    rule: 'folds-flat',
    severity: 'error',
    message: `The ring of ${namesOf(section, cycle)} lies flat only when all its creases are open, so the card cannot be shut`,
    suggestion: 'Make two sides of the ring as long as the other two together',
  }
}

function together(section: Section, { cycles }: Rings): Finding {
  return {
    rule: 'folds-flat',
    severity: 'error',
    message: `The rings of ${namesOf(section, cycles.flat())} close each by itself, but not together`,
    suggestion: 'Leave one of the pieces out, or give the rings the same lengths',
  }
}

interface Bar {
  readonly names: readonly string[]
  /** Distance between the two creases of the ring on one body. */
  readonly length: number
}

function barsOf({ links, plates, model }: Section, cycle: readonly number[]): Bar[] {
  const ends = new Map<number, number[]>()
  for (const link of cycle.flatMap((i) => links[i] ?? []))
    for (const [body, u] of [
      [link.a, link.lineA[0][0]],
      [link.b, link.lineB[0][0]],
    ] as const)
      ends.set(body, [...(ends.get(body) ?? []), u])
  return [...ends].map(([body, [u0 = 0, u1 = 0]]) => ({
    names: plates.filter((plate) => plate.body === body).map(({ index }) => model.plates[index]?.name ?? ''),
    length: Math.abs(u1 - u0),
  }))
}

/** The smallest distance from zero that the lengths reach with a sign each. */
function smallestSum(lengths: readonly number[]): number {
  let sums = new Set([0])
  for (const length of lengths) {
    const next = new Set<number>()
    for (const sum of sums) {
      next.add(Math.abs(sum + length))
      next.add(Math.abs(sum - length))
    }
    // Sums far from zero cannot come back; when there are too many, the nearest do.
    sums = next.size > mostSums ? new Set([...next].sort((a, b) => a - b).slice(0, mostSums)) : next
  }
  return Math.min(...sums)
}

/** The plates that the creases of a ring join. */
export function namesOf({ links, plates, model }: Section, cycle: readonly number[]): string {
  const parts = cycle.flatMap((i) => links[i] ?? []).flatMap(({ p, q }) => [p, q])
  return sayNames(
    [...new Set(parts)].sort((a, b) => a - b).map((i) => model.plates[plates[i]?.index ?? 0]?.name ?? ''),
  )
}
