import { listOf } from '../../length/finding.ts'
import type { Sentence } from '../prose/sentence.ts'
import { askedIn, listedIn } from '../tools/needed.ts'
import { serves, toolWords } from '../tools/vocabulary.ts'
import { asksFor, type Work } from '../tools/work.ts'
import { isInEnglish } from './in-english.ts'
import { type Rule, type RuleInput, startOf } from './rule.ts'

/** A step names a tool or a supply that nobody was told to bring. */
export const unlistedTool: Rule = {
  docs: [
    {
      name: 'unlisted-tool',
      about: 'A step names a tool or a supply that is not in the list of supplies.',
      example:
        '```supplies\nshared:\n  scissors: 1 per 2\n```\n\n1. Cut the base to {base.size} with scissors.\n2. Punch the corners with a corner punch.',
    },
    {
      name: 'no-supplies',
      about: 'The lesson has no list of supplies.',
      example: '1. Cut the base to {base.size} with scissors.',
    },
  ],
  find: (input) => {
    if (!isInEnglish(input) && !toolWords[input.filled.wording.locale]) return []
    if (!input.lesson.supplies) return withoutList(input)
    const listed = listedIn(input.filled)
    const missing = askedBy(input).filter(({ tool }) => !listed.some((had) => serves(had, tool)))
    const first = missing.filter(({ tool }, i) => missing.findIndex((other) => other.tool === tool) === i)
    return first.map(({ sentence, start, end }) => ({
      rule: 'unlisted-tool',
      severity: 'warning' as const,
      message: `Step ${sentence.step} names \`${sentence.words.slice(start, end)}\`, which is not in the list of supplies`,
      suggestion: `Add \`${sentence.words.slice(start, end).toLowerCase()}\` to \`each\` or \`shared\` in the supplies, or name what is there`,
      place: sentence.place(start, end),
    }))
  },
}

/** What people do at their tables: not what a caution warns of, and not what the teacher does before or as a variation. */
const isDone = ({ step, callout, kind }: Sentence): boolean =>
  step !== undefined && kind !== 'heading' && (callout === undefined || callout === 'tip')

const askedBy = ({ prose, filled }: RuleInput) =>
  askedIn(prose.sentences().filter(isDone), prose.mentions, filled.wording.locale)

const basic = [
  ['cut', 'scissors'],
  ['score', 'scoring board'],
  ['stick', 'glue stick'],
] as const satisfies readonly (readonly [Work, string])[]

/** Told once, and only of a lesson whose steps want something. What is wrong with a block has been told already. */
function withoutList(input: RuleInput) {
  const told = input.lesson.findings.some(({ rule }) =>
    ['block-place', 'open-block', 'unknown-block'].includes(rule),
  )
  if (told || input.filled.cards.length === 0) return []
  const said = input.prose.sentences().filter(isDone)
  const asked = askedBy(input).map(({ tool, sentence: { words }, start, end }) =>
    isInEnglish(input) ? tool.name : words.slice(start, end),
  )
  const worked = basic
    .filter(([work]) => isInEnglish(input) && said.some(({ words }) => asksFor(work, words)))
    .map(([, name]) => name)
  const names = [...new Set(asked.length > 0 ? asked : worked)].map((name) => `\`${name}\``)
  if (names.length === 0) return []
  return [
    {
      rule: 'no-supplies',
      severity: 'warning' as const,
      message: 'The lesson has no list of supplies, so nobody knows what to bring',
      suggestion: `Add a block that starts with three backticks and \`supplies\`, and in it \`shared:\` with lines such as \`scissors: 1 per 2\`; the steps want ${listOf(names)}`,
      place: startOf(input),
    },
  ]
}
