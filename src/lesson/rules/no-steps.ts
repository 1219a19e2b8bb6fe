import { hasErrors } from '../../length/finding.ts'
import { type Rule, startOf } from './rule.ts'

/** `no-steps`: a lesson without a numbered list teaches nothing. Not told of a file that could not be read well. */
export const noSteps: Rule = (input) =>
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
      ]
