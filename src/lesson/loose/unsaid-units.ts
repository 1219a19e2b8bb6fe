import { readYaml } from '../../card/yaml.ts'
import type { Lesson } from '../lesson.ts'

/** Whether a lesson that does not say its unit has a card in millimetres: its print would be in inches. */
export function isUnsaidMetric({ cards, frontMatterBlock }: Lesson): boolean {
  const says = frontMatterBlock && readYaml(frontMatterBlock).top.value.fields.has('units')
  if (says) return false
  const blocks = cards.map(({ text }) => text).join('\n')
  const count = (unit: RegExp): number => [...blocks.matchAll(unit)].length
  return count(/\d ?(?:mm|cm)\b/g) > count(/[\d¼½¾⅐-⅞] ?(?:in\b|["″])/g)
}
