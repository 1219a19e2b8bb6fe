import type { Action } from '../actions/action.ts'
import { placeOfAction, stepOf } from '../actions/course.ts'
import type { Rule } from './rule.ts'

/**
 * How many things a step may ask for that change the card: cutting, scoring, folding, sticking, drawing. Turning, holding
 * and pressing do not count, and doing the same to several pieces counts once a piece that is named. Common practice, no
 * source: more than this does not go into one figure, and a beginner with glue on their fingers loses the place.
 */
const most = 5

/** A step asks for more than one figure can show. */
export const crowdedStep: Rule = {
  docs: [
    {
      name: 'crowded-step',
      about: `A step asks for more than ${most} things at once.`,
      example:
        '1. Cut the base to {base.size}, score it at {base.scores} and fold it. Cut the backdrop to {backdrop.size}, draw a boat on it and stick it on the floor. Cut the sea wall to {sea wall.size} and stick it across.',
    },
  ],
  find: ({ prose }) => {
    const { actions } = prose.course()
    const bySteps = new Map<number, Action[]>()
    for (const action of actions.filter(changes))
      bySteps.set(stepOf(action), [...(bySteps.get(stepOf(action)) ?? []), action])
    return [...bySteps].flatMap(([step, done]) => {
      const next = done[most]
      if (!next) return []
      const name = next.objects[0]?.named.name
      return [
        {
          rule: 'crowded-step',
          severity: 'warning' as const,
          message: `Step ${step} asks for ${done.length} things, and a reader can keep about ${most} in mind`,
          suggestion: `Begin a new step ${name === undefined ? 'about here' : `for \`${name}\``}, or earlier, and give it a figure of its own`,
          place: placeOfAction(next),
        },
      ]
    })
  },
}

/** Putting tape on belongs to sticking. */
const changes = ({ kind, says }: Action): boolean => kind !== 'handle' && !(kind === 'lay' && says === 'glue')
