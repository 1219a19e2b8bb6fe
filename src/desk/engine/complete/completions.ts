import type { Completion } from '../complete.ts'
import type { Settings } from '../engine.ts'
import { siteAt } from '../site/site.ts'
import { lessonAround } from './cursor-line.ts'
import { attributeCompletions } from './in-attribute.ts'
import { cardCompletions } from './in-card.ts'
import { directiveCompletions } from './in-directive.ts'
import { frontCompletions, supplyCompletions } from './in-front-matter.ts'
import { measureCompletions } from './measures.ts'
import { namedValues } from './names.ts'

/**
 * What may be written at a place of a lesson, from the tables that the checks use.
 *
 * @param at an offset of the text: the cursor.
 */
export function completionsAt(text: string, at: number, settings: Settings): Completion[] {
  const kept = lessonAround(text, at, settings)
  const site = siteAt(kept.lesson, at)
  switch (site.kind) {
    case 'card':
      return cardCompletions(site, kept)
    case 'front matter':
      return frontCompletions(site, kept)
    case 'supplies':
      return supplyCompletions(site, kept)
    case 'measure':
      return measureCompletions(site.word, at, namedValues(kept.filled))
    case 'attribute':
      return attributeCompletions(site, kept)
    case 'directive':
      return directiveCompletions(site)
    case 'words':
      return []
  }
}
