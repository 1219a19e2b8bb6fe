import { type Entry, type Field, readYaml } from '../../../card/yaml.ts'
import type { Lesson } from '../../../lesson/lesson.ts'

/** The stocks that the cards of a lesson are made of, each once, in the order of the file. */
export function stocksOf({ cards }: Pick<Lesson, 'cards'>): string[] {
  const inside = ({ key, value }: Field): string[] =>
    key === 'stock' && value.kind === 'text' ? [value.text.trim()] : within(value)
  const within = (entry: Entry): string[] =>
    entry.kind === 'map'
      ? [...entry.fields.values()].flatMap(inside)
      : entry.kind === 'list'
        ? entry.items.flatMap(within)
        : []
  return [...new Set(cards.flatMap((block) => inside(readYaml(block).top)))]
}
