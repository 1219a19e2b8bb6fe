import type { Place } from '../../length/finding.ts'
import type { Sentence } from '../prose/sentence.ts'
import { timeOfSteps } from '../time-of-steps.ts'
import type { Rule, RuleInput } from './rule.ts'

/** The steps take longer than the class. */
export const classTime: Rule = {
  docs: [
    {
      name: 'class-time',
      about:
        'The minutes of the steps, with the waiting for what dries, add up to more than the `time` of the class.',
      example:
        '---\ntitle: An example\ntime: 10 min\n---\n\n```card\nfold: side\nclosed: 5 x 7 in\n```\n\n1. Cut the base to {base.size}. :minutes[8]\n2. Score it at {base.scores}. :minutes[5]',
    },
  ],
  find: ({ filled: { frontMatter, steps } }) => {
    const { time } = frontMatter
    const sum = timeOfSteps(steps)
    if (!time || sum <= time.minutes) return []
    const longest = steps.reduce((a, b) => ((b.minutes ?? 0) > (a.minutes ?? 0) ? b : a))
    return [
      {
        rule: 'class-time',
        severity: 'warning',
        message: `The steps take ${shown(sum)} min, ${shown(sum - time.minutes)} min more than the class of ${shown(time.minutes)} min`,
        suggestion: `Write \`time: ${shown(sum)} min\`, or do some of it before the class: step ${longest.number} alone takes ${shown(longest.minutes ?? 0)} min`,
        place: time.place,
      },
    ]
  },
}

/** Some steps have a time and others none, or the class has one and no step has. */
export const untimedStep: Rule = {
  docs: [
    {
      name: 'untimed-step',
      about: 'Some steps say how long they take, and this one does not.',
      example: '1. Cut the base to {base.size}. :minutes[5]\n2. Score it at {base.scores}.',
    },
  ],
  find: (input) => {
    const { frontMatter, steps } = input.filled
    // A time that cannot be read has been told.
    if (input.lesson.findings.some(({ rule }) => rule === 'minutes' || rule === 'drying')) return []
    const without = steps.filter((step) => step.minutes === undefined)
    if (without.length === steps.length)
      return frontMatter.time && steps.length > 0
        ? [told('The class has a time, and no step says how long it takes', frontMatter.time.place)]
        : []
    return without.map((step) =>
      told(
        `Step ${step.number} does not say how long it takes`,
        firstWords(input, step.number) ?? step.place,
      ),
    )
  },
}

const told = (message: string, place: Place) => ({
  rule: 'untimed-step',
  severity: 'hint' as const,
  message,
  suggestion: 'Write for example `:minutes[5]` at the end of the step',
  place,
})

/** Where a step begins to speak, which is easier to look at than all of it. */
function firstWords({ prose }: RuleInput, number: number): Place | undefined {
  const first = prose.sentences().find(({ step, callout }: Sentence) => step === number && !callout)
  return first?.place(0, first.words.length)
}

/** Minutes to two places, which is finer than anyone keeps them. */
const shown = (minutes: number): string => String(Math.round(minutes * 100) / 100)
