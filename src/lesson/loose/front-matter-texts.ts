import { readYaml } from '../../card/yaml.ts'
import type { Lesson } from '../lesson.ts'
import type { Sentence } from '../prose/sentence.ts'

/** The texts of the front matter that are printed, as sentences that belong to no step. */
export function frontMatterTexts({ frontMatter, frontMatterBlock, source }: Lesson): Sentence[] {
  // To read it again for its places takes longer than all the rest of it.
  const printed = `${frontMatter.title} ${frontMatter.summary ?? ''}`
  if (!frontMatterBlock || !/\d|[¼½¾⅐-⅞]|inch|met(?:re|er)/i.test(printed)) return []
  const { fields } = readYaml(frontMatterBlock).top.value
  return ['title', 'summary'].flatMap((key): Sentence[] => {
    const entry = fields.get(key)?.value
    if (entry?.kind !== 'text') return []
    const { offset, end } = entry.place
    const words = entry.text.replace(/\s/g, ' ')
    return [
      {
        words,
        measures: [],
        meant: [],
        kind: 'text',
        place(from, to) {
          if (offset === undefined || end === undefined) return entry.place
          const at = source.text.slice(offset, end).indexOf(words.slice(from, to))
          return at < 0 ? entry.place : source.place(offset + at, offset + at + to - from)
        },
      },
    ]
  })
}
