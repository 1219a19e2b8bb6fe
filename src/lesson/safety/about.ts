import { listOf, nearestWord } from '../../length/finding.ts'
import { locales } from '../../wording/locales.ts'
import { dangersIn } from './danger.ts'
import { cautionTopics } from './hazards.ts'

/** What a caution says that it is about, read. */
export interface About {
  readonly topics: readonly string[]
  /** A word that is no hazard, and what would cure it. */
  readonly unknown?: { readonly word: string; readonly suggestion: string }
}

/** Reads `blades`, `hot glue` or `"blades, hot-glue"`. */
export function readAbout(text: string): About {
  const words = text
    .split(/,|\band\b/)
    .map((word) => word.trim().toLowerCase().replace(/\s+/g, '-'))
    .filter((word) => word !== '')
  const topics = words.filter((word) => cautionTopics.includes(word))
  const word = words.length === 0 ? text : words.find((other) => !cautionTopics.includes(other))
  return word === undefined ? { topics } : { topics, unknown: { word, suggestion: suggestionFor(word) } }
}

/** A tool, in any language, has the name of its hazard; a slip of the pen the nearest one. */
function suggestionFor(word: string): string {
  const [tool] = locales.flatMap((locale) =>
    dangersIn(word.replaceAll('-', ' '), { as: 'item', children: true, locale }),
  )
  const near = tool?.hazard.name ?? nearestWord(word, cautionTopics)
  const choice = listOf(
    cautionTopics.map((topic) => `\`${topic}\``),
    'or',
  )
  return near === undefined ? `Choose one of ${choice}` : `Write \`${near}\``
}
