import { type Finding, listOf } from '../../length/finding.ts'
import { directiveOf } from '../figures/directive.ts'
import { type Offered, offeredFigures } from '../figures/offered.ts'
import type { FilledLesson, Lesson } from '../lesson.ts'
import { placeOf } from '../source.ts'
import { proseOf } from './prose.ts'
import type { Rule } from './rule.ts'

const name = 'step-without-figure'

/** A step cuts, scores, folds or sticks what takes a drawing to see, and has no figure. Told once for all steps. */
export const stepWithoutFigure: Rule = {
  docs: [
    {
      name,
      about: 'A step would be easier to follow with a figure that the lesson has nowhere.',
      example:
        '1. Cut the base to {base.size} and score it at {base.scores}.\n2. Cut the backdrop to {backdrop.size} and stick it on the floor.\n3. Cut the sea wall to {sea wall.size} and stick it across.',
    },
  ],
  find: ({ filled, complete, prose }) => {
    const offered = complete ? offeredFigures(filled, prose.course()) : []
    const [first] = offered
    if (!first) return []
    return [
      {
        rule: name,
        severity: 'hint',
        message:
          offered.length === 1
            ? `Step ${first.step} has no figure and could have one`
            : `Steps ${listOf(offered.map(({ step }) => `${step}`))} have no figure and could have one`,
        suggestion: `Write below the text of ${listOf(
          offered.map((one) => `step ${one.step} \`${directiveOf(one)}\``),
        )}; \`check --figures auto\` puts ${offered.length === 1 ? 'it' : 'them'} in`,
        place: startOfStep(first),
      },
    ]
  },
}

/** The findings of a lesson with one for each step in the place of the one for all of them. */
export const stepByStep = (lesson: Lesson, filled: FilledLesson): Finding[] =>
  filled.findings.flatMap((finding) =>
    finding.rule === name
      ? offeredFigures(filled, proseOf({ lesson, filled }).course()).map((one) => ({
          ...finding,
          message: `Step ${one.step} has no figure and could have one`,
          suggestion: `Write below its text \`${directiveOf(one)}\``,
          place: startOfStep(one),
        }))
      : [finding],
  )

/** The beginning of a step: all of it would be a long way to underline. */
function startOfStep({ item: { position } }: Offered) {
  const { line, column, offset } = placeOf(position)
  return { line, column, ...(offset !== undefined && { offset, end: offset + 1 }) }
}
