import { type Rule, startOf } from './rule.ts'

/** A lesson without a card block has nothing to compute. An error only if something needs it. */
export const noCard: Rule = {
  docs: [
    {
      name: 'no-card',
      about: 'The lesson has no card block, so nothing can be measured or drawn.',
      example: '---\ntitle: An example\n---\n\n1. Cut the base to {base.size}.',
    },
  ],
  find: (input) => {
    const { lesson, figures, needsNames } = input
    const told = lesson.findings.some(({ rule }) =>
      ['block-place', 'open-block', 'unknown-block'].includes(rule),
    )
    if (lesson.cards.length > 0 || told) return []
    return [
      {
        rule: 'no-card',
        severity: needsNames || figures.length > 0 ? 'error' : 'warning',
        message: 'The lesson has no card block, so there is nothing to measure or to draw',
        suggestion: 'Add a block that starts with three backticks and `card`, and says `fold:` and `closed:`',
        place: startOf(input),
      },
    ]
  },
}
