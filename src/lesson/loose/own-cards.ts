import type { Card } from '../../card/card.ts'
import { proveCard } from '../../fold/prove-card.ts'
import type { Lesson } from '../lesson.ts'
import { gridFor } from '../ruler.ts'
import type { RuleInput } from '../rules/rule.ts'

/** The cards of a lesson in the size, the unit and with the ruler that it is written in, whatever it is printed in. */
export function ownCards({
  lesson,
  filled,
  wishes,
}: Pick<RuleInput, 'lesson' | 'filled' | 'wishes'>): Card[] {
  const { units } = lesson.frontMatter
  const isOwn =
    wishes?.closed === undefined &&
    filled.unit === units &&
    filled.grid.equals(gridFor(lesson.frontMatter, units))
  return isOwn ? filled.cards.map(({ card }) => card) : cardsAsWritten(lesson)
}

/** The cards of a lesson before it is printed. */
function cardsAsWritten({ frontMatter, cards }: Lesson): Card[] {
  const unit = frontMatter.units
  const grid = gridFor(frontMatter, unit)
  return cards.flatMap((block) => proveCard(block, { unit, grid }).card ?? [])
}
