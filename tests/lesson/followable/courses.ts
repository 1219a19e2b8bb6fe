import { readdirSync, readFileSync } from 'node:fs'
import { foldStyles } from '../../../src/card/fold-styles.ts'
import { actionsOf } from '../../../src/lesson/actions/actions.ts'
import { courseOf } from '../../../src/lesson/actions/course.ts'
import { fillLesson } from '../../../src/lesson/fill.ts'
import { fillTree } from '../../../src/lesson/fill-tree.ts'
import { measureText } from '../../../src/lesson/measure.ts'
import { namesOf } from '../../../src/lesson/names.ts'
import type { Sentence } from '../../../src/lesson/prose/sentence.ts'
import { readLesson } from '../../../src/lesson/read.ts'
import { crowdedStep } from '../../../src/lesson/rules/crowded-step.ts'
import { neverCut } from '../../../src/lesson/rules/never-cut.ts'
import { neverUsed } from '../../../src/lesson/rules/never-used.ts'
import { noEnvelopeSteps } from '../../../src/lesson/rules/no-envelope-steps.ts'
import { proseOf } from '../../../src/lesson/rules/prose.ts'
import type { RuleInput } from '../../../src/lesson/rules/rule.ts'
import { scoreUnsaid } from '../../../src/lesson/rules/score-unsaid.ts'
import { stuckTooEarly } from '../../../src/lesson/rules/stuck-too-early.ts'
import { usedBeforeCut } from '../../../src/lesson/rules/used-before-cut.ts'
import { starterLesson } from '../../../src/workshop/starter.ts'

/** The rules about whether a lesson can be followed. */
export const followableRules = [
  usedBeforeCut,
  neverCut,
  neverUsed,
  scoreUnsaid,
  stuckTooEarly,
  crowdedStep,
  noEnvelopeSteps,
]
export const followableNames = followableRules.flatMap(({ docs }) => docs.map(({ name }) => name))

const folder = new URL('../../../lessons/', import.meta.url)

/** The example lessons, by file name. */
export const exampleTexts = readdirSync(folder)
  .filter((name) => name.endsWith('.md'))
  .map((name) => [name, readFileSync(new URL(name, folder), 'utf8')] as const)

/** The starter lessons, by fold. */
export const starterTexts = [...foldStyles.values()].map(
  (style) => [style.name, starterLesson(style)] as const,
)

/** What the rules look at in a lesson. */
export function inputOf(text: string): RuleInput {
  const lesson = readLesson(text)
  const filled = fillLesson(lesson)
  return { lesson, filled, figures: [], needsNames: true, complete: true, prose: proseOf({ lesson, filled }) }
}

/** The same lesson in other words: its cards stay as they are, and are not proven again. */
export function inOtherWords(
  { filled, lesson: { frontMatter }, ...input }: RuleInput,
  text: string,
): RuleInput {
  const lesson = { ...readLesson(text), frontMatter }
  const lookup = namesOf(
    filled.cards.map(({ card }) => card),
    true,
  )
  const tree = fillTree(lesson.tree, {
    figure: () => undefined,
    measure: (node) => {
      const { text: said } = measureText(node, { ...filled, lookup })
      return said === undefined ? node : { ...node, text: said }
    },
  })
  const refilled = { ...filled, tree }
  return { ...input, lesson, filled: refilled, prose: proseOf({ lesson, filled: refilled }) }
}

/** The same lesson with other sentences. */
export function withSentences(input: RuleInput, sentences: readonly Sentence[]): RuleInput {
  const { named, mentions } = input.prose
  const course = courseOf(sentences, named(), actionsOf(sentences, mentions))
  return { ...input, prose: { ...input.prose, sentences: () => sentences, course: () => course } }
}

export const found = (input: RuleInput) => followableRules.flatMap((rule) => rule.find(input))
