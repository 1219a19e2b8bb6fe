import { placeOfAction, stepOf } from '../actions/course.ts'
import { earlyUses } from '../actions/early-uses.ts'
import type { Rule } from './rule.ts'

/** A piece is scored, stuck or written on in a step before the one that cuts it. Told once for each piece. */
export const usedBeforeCut: Rule = {
  docs: [
    {
      name: 'used-before-cut',
      about: 'A step uses a piece that a later step cuts.',
      example:
        '1. Cut the base to {base.size} and score it at {base.scores}.\n2. Stick the backdrop on the floor.\n3. Cut the backdrop to {backdrop.size}.',
    },
  ],
  find: ({ prose }) =>
    earlyUses(prose.course()).map(({ piece, use, cutIn }) => {
      const [used, name] = [stepOf(use), `\`${piece.name}\``]
      return {
        rule: 'used-before-cut',
        severity: 'warning',
        message: `Step ${used} uses ${name}, which step ${cutIn} cuts`,
        suggestion: `Cut ${name} before step ${used}, or move step ${used} behind step ${cutIn}`,
        place: placeOfAction(use),
      }
    }),
}
