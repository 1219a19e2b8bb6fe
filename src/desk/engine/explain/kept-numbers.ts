import type { Lesson, ProvenCard } from '../../../lesson/lesson.ts'
import { explainCard } from '../../../workshop/explain/explain.ts'
import type { Explained } from '../../../workshop/explain/explained.ts'

const most = 4
const kept = new Map<string, ReadonlyMap<string, Explained>>()

/**
 * Every number of a card explained, by its name. That takes a second or two, so it is kept for as long as the card block
 * stays as it is; words around it may change.
 */
export function explainedNumbers(
  { cards }: Pick<Lesson, 'cards'>,
  proven: ProvenCard,
): ReadonlyMap<string, Explained> {
  const { card } = proven
  const block = cards.find(({ name }) => name === card.name)
  const { width, height } = card.closed
  const key = [
    ...[card.unit, card.grid.toFraction(), width.toFraction(), height.toFraction()],
    ...[block?.place.line, block?.text],
  ].join('\n')
  const found = kept.get(key) ?? new Map(explainCard({ cards }, proven).map((one) => [one.name, one]))
  kept.delete(key)
  kept.set(key, found)
  for (const old of kept.keys()) if (kept.size > most) kept.delete(old)
  return found
}
