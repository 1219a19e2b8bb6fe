import type { Finding } from '../../length/finding.ts'
import { longAmountPattern, numberInWords } from '../loose/number-words.ts'
import { minutesIn } from '../minutes-in.ts'
import { latin } from '../prose/latin.ts'
import { overlaps, type Sentence } from '../prose/sentence.ts'
import { isInEnglish } from './in-english.ts'
import type { Rule } from './rule.ts'

/** `twenty`, `half an`, `a quarter of an`. */
const inWords = `${longAmountPattern}(?: of)?(?: an?)?(?= |-)`
const number = `(?:\\d+(?:\\.\\d+)?(?: \\d/\\d)?|\\d*[¼½¾]|${inWords})`
const time = new RegExp(
  `(?<![${latin}\\d¼½¾.,:/-])(?:${number}[ -]?(?:minutes?|mins?|hours?|hrs?)(?: (?:and )?${number}[ -]?(?:minutes?|mins?))?)(?![${latin}\\d])`,
  'gi',
)

const everyInWords = new RegExp(`\\b${inWords}`, 'g')

/** Words of a sentence whose time is that of something that lies. */
const drying = /\b(?:dry|dries|drying|dried|harden|hardens|hardening|set hard|cures?|curing)\b/i

/** A time stands in the words of a step, and does not count for the class. */
export const looseTime: Rule = {
  docs: [
    {
      name: 'loose-time',
      about:
        'A step says in its words that something takes time, and neither its `:minutes[…]` nor its `:drying[…]` hold it.',
      example: '1. Cut the base to {base.size}. Let the ink dry for 30 minutes. :minutes[5]',
    },
  ],
  find(input) {
    if (!isInEnglish(input)) return []
    const { steps } = input.filled
    return input.prose.sentences().flatMap((sentence) => {
      // What stands in a call-out is done at another time.
      if (sentence.step === undefined || sentence.callout !== undefined) return []
      // Few sentences speak of time, and looking for numbers takes long.
      if (!/min|hour|hr/i.test(sentence.words)) return []
      const step = steps.find(({ number }) => number === sentence.step)
      const counted = Math.max(step?.minutes ?? 0, step?.drying?.minutes ?? 0)
      return [...sentence.words.matchAll(time)].flatMap(({ index, 0: words }) =>
        told(sentence, index, words, counted),
      )
    })
  },
}

function told(
  { place, meant, measures, words: all }: Sentence,
  start: number,
  words: string,
  counted: number,
): Finding[] {
  const end = start + words.length
  const minutes = minutesIn(
    words
      .toLowerCase()
      .replace(everyInWords, (word) => inFigures(word))
      .replace('-', ' '),
  )
  if (
    minutes === undefined ||
    minutes <= counted ||
    [...meant, ...measures].some((one) => overlaps(one, { start, end }))
  )
    return []
  return [
    {
      rule: 'loose-time',
      severity: 'hint',
      message:
        counted > 0
          ? `\`${words}\` is more than the ${counted} min that the step counts for`
          : `\`${words}\` does not count for the time of the class`,
      suggestion: `Write \`:minutes[${minutes}]\` if the class waits for it, or \`${drying.test(all) ? `:drying[${minutes} min]` : `:meant[${words}]`}\` if it goes on meanwhile`,
      place: place(start, end),
    },
  ]
}

/** `half an` is `1/2`. */
const inFigures = (words: string): string =>
  numberInWords(words.replace(/(?: of)? an?$/, ''))?.value.toFraction() ?? words
