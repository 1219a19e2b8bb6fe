import { closingAdvice } from '../safety/cautions.ts'
import type { Rule } from './rule.ts'

/**
 * A tool or a supply can hurt, and the lesson has no caution about that. A hint only: the general caution is printed, and
 * stays so when the rule is allowed. A teacher who knows the room and the group can word a better one.
 */
export const noCaution: Rule = {
  docs: [
    {
      name: 'no-caution',
      about:
        'A tool or a supply can hurt, and the lesson has no `:::caution` about that: a general one is printed before the first step.',
      example: '1. Cut the base to {base.size} with a craft knife.',
    },
  ],
  find: ({ filled }) =>
    filled.cautions.flatMap(({ about, text, adultsOnly, because }) =>
      because
        ? [
            {
              rule: 'no-caution',
              severity: 'hint' as const,
              message: adultsOnly
                ? `The lesson is for children, and its caution about \`${because.word}\` does not say what an adult does: that is printed before the first step`
                : `\`${because.word}\` can hurt, and no caution of the lesson is about it: a general one is printed before the first step`,
              suggestion: `Word it for your room, at the step where it is needed, in a \`:::caution{about=${about}}\`: ${text} ${closingAdvice(filled)}`,
              place: because.place,
            },
          ]
        : [],
    ),
}
