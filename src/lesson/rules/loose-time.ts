import type { Finding } from '../../length/finding.ts'
import { minutesIn } from '../minutes-in.ts'
import type { Sentence } from '../prose/sentence.ts'
import { isInEnglish } from './in-english.ts'
import type { Rule } from './rule.ts'

/** Numbers that are written out, in figures. */
const inFigures: Readonly<Record<string, string>> = {
  'a quarter of an': '1/4',
  'half an': '1/2',
  'half a': '1/2',
  'three quarters of an': '3/4',
  a: '1',
  an: '1',
  one: '1',
  two: '2',
  three: '3',
  four: '4',
  five: '5',
  six: '6',
  seven: '7',
  eight: '8',
  nine: '9',
  ten: '10',
  twelve: '12',
  fifteen: '15',
  twenty: '20',
  thirty: '30',
  forty: '40',
  'forty-five': '45',
  sixty: '60',
  ninety: '90',
}
const written = Object.keys(inFigures)
  .sort((a, b) => b.length - a.length)
  .join('|')
const number = `(?:\\d+(?:\\.\\d+)?(?: \\d/\\d)?|\\d*[¼½¾]|(?:${written})(?= ))`
const time = new RegExp(
  `(?<![\\p{L}\\p{N}.,:/-])(?:${number}[ -]?(?:minutes?|mins?|hours?|hrs?)(?: (?:and )?${number}[ -]?(?:minutes?|mins?))?)(?![\\p{L}\\p{N}])`,
  'giu',
)

const numberInWords = new RegExp(`\\b(?:${written})(?= )`, 'g')

/** A time stands in the words of a step, and does not count for the class. */
export const looseTime: Rule = {
  docs: [
    {
      name: 'loose-time',
      about: 'A step says in its words that something takes time, and its `:minutes[…]` do not hold it.',
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
      const counted = steps.find((step) => step.number === sentence.step)?.minutes ?? 0
      return [...sentence.words.matchAll(time)].flatMap(({ index, 0: words }) =>
        told(sentence, index, words, counted),
      )
    })
  },
}

function told(
  { place, meant, measures }: Sentence,
  start: number,
  words: string,
  counted: number,
): Finding[] {
  const end = start + words.length
  const covers = (one: { start: number; end: number }): boolean => one.start < end && start < one.end
  const minutes = minutesIn(
    words
      .toLowerCase()
      .replace(numberInWords, (word) => inFigures[word] ?? word)
      .replace('-', ' '),
  )
  if (minutes === undefined || minutes <= counted || [...meant, ...measures].some(covers)) return []
  return [
    {
      rule: 'loose-time',
      severity: 'hint',
      message:
        counted > 0
          ? `\`${words}\` is more than the ${counted} min that the step counts for`
          : `\`${words}\` does not count for the time of the class`,
      suggestion: `Write \`:minutes[${minutes}]\` if the class waits for it, or \`:meant[${words}]\` if it goes on meanwhile`,
      place: place(start, end),
    },
  ]
}
