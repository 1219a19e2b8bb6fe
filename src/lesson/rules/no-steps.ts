import { hasErrors } from '../../length/finding.ts'
import { type Rule, startOf } from './rule.ts'

/** A lesson without a numbered list teaches nothing. Not told of a file that could not be read well. */
export const noSteps: Rule = {
  docs: [
    {
      name: 'no-steps',
      about: 'The lesson has no numbered list, so it has no steps.',
      example: '- Cut the base to {base.size}.',
    },
  ],
  find: (input) =>
    input.lesson.steps.length > 0 || hasErrors(input.lesson.findings)
      ? []
      : [
          {
            rule: 'no-steps',
            severity: 'warning',
            message: 'The lesson has no steps',
            suggestion: 'Write them as a numbered list: `1. Cut the base to {base.size}.`',
            place: startOf(input),
          },
        ],
}
