import { checkCard } from '../../../src/card/check.ts'
import type { Size, Unit } from '../../../src/length/length.ts'
import { fillLesson } from '../../../src/lesson/fill.ts'
import type { ProvenCard } from '../../../src/lesson/lesson.ts'
import { readLesson } from '../../../src/lesson/read.ts'
import { explainCard } from '../../../src/workshop/explain/explain.ts'

/** The cards of a lesson with their numbers explained, and a way to make each at other sizes. */
export function explained(text: string, unit: Unit, closed?: Size) {
  const lesson = readLesson(text)
  const { cards, findings } = fillLesson(lesson, { units: unit, ...(closed && { closed }) })
  const broken = findings.filter(({ severity }) => severity === 'error')
  if (broken.length > 0 || cards.length === 0) throw new Error(broken.map((f) => f.message).join('\n'))
  return cards.map((proven: ProvenCard) => {
    const { card, proof } = proven
    const block = lesson.cards.find(({ name }) => name === card.name)
    if (!block) throw new Error(card.name)
    return {
      card,
      numbers: explainCard(lesson, proven),
      /** The card at another size, its thickness as it was. */
      at: (size: Size) =>
        checkCard(block, { unit, grid: card.grid, closed: size, thickness: () => proof.closed?.thickness })
          .card,
    }
  })
}

/** A lesson of nothing but a card block. */
export const lessonOf = (block: string): string => `---\ntitle: A card\n---\n\n\`\`\`card\n${block}\n\`\`\`\n`

/** The formulas of a card by the names of its numbers. */
export function formulas(block: string, unit: Unit = 'in'): Record<string, string> {
  const [card] = explained(lessonOf(block), unit)
  return Object.fromEntries(
    (card?.numbers ?? []).flatMap(({ name, source }) =>
      source.kind === 'formula' ? [[name, source.text]] : [],
    ),
  )
}
