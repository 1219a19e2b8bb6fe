import { askedIn } from '../tools/needed.ts'
import { serves, toolsIn } from '../tools/vocabulary.ts'
import { asksFor } from '../tools/work.ts'
import { isInEnglish } from './in-english.ts'
import type { Rule } from './rule.ts'

/**
 * Something is on the list that no step needs: neither by its name, nor by a looser one, nor for the work it is for. What
 * the tutor brings may be for anything.
 */
export const unusedSupply: Rule = {
  docs: [
    {
      name: 'unused-supply',
      about: 'A tool or a supply is in the list, and no step needs it.',
      example:
        '```supplies\nshared:\n  scissors: 1 per 2\n  hole punch: 1 per 4\n```\n\n1. Cut the base to {base.size} with scissors.',
    },
  ],
  find: (input) => {
    const { filled, prose, lesson } = input
    if (!isInEnglish(input) || lesson.steps.length === 0 || filled.cards.length === 0) return []
    const sentences = prose
      .sentences()
      .filter(({ step, callout }) => step !== undefined || callout !== undefined)
    const text = sentences.map(({ words }) => words).join('\n')
    const asked = askedIn(sentences, prose.mentions, filled.wording.locale)
    const isNeeded = (item: string): boolean => {
      const tools = toolsIn(item, filled.wording.locale)
      if (tools.length === 0) return sharesWord(item, text)
      return tools.some(
        ({ tool }) =>
          asked.some((other) => serves(tool, other.tool)) ||
          (tool.work ?? []).some((work) => asksFor(work, text)),
      )
    }
    return [...filled.supplies.each, ...filled.supplies.shared]
      .filter(({ item }) => !isNeeded(item))
      .map(({ item, place }) => ({
        rule: 'unused-supply',
        severity: 'warning' as const,
        message: `\`${item}\` is in the list of supplies, and no step needs it`,
        suggestion: 'Name it in the step that needs it, or take it out of the list',
        place,
      }))
  },
}

/** Whether a text has one of the longer words of an item that is in no vocabulary, one or several. */
function sharesWord(item: string, text: string): boolean {
  const words = item.toLowerCase().match(/\p{L}{3,}/gu) ?? []
  const telling = words.filter(
    (word) => !/^(?:and|for|the|with|from|per|any|some|small|large|other)$/.test(word),
  )
  // A list in letters that are not told apart, such as `A4`, is left alone.
  return (
    telling.length === 0 ||
    telling.some((word) => {
      const stem = word.replace(/(?:ies|es|s|y|ing|ed|e)$/, '')
      return new RegExp(`(?<!\\p{L})${stem.length > 2 ? stem : word}`, 'iu').test(text)
    })
  )
}
