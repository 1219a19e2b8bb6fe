import type { Rule } from './rule.ts'

const made = /\b(?:mak(?:e|ing)|cut(?:ting)?|fold(?:ing)?|scor(?:e|ing)|assembl(?:e|ing)|construct)\b/i

/** The card block has an envelope, and no step makes it. */
export const noEnvelopeSteps: Rule = {
  docs: [
    {
      name: 'no-envelope-steps',
      about: 'The card has an envelope, and no step makes it.',
      example:
        '1. Cut the base to {base.size} and score it at {base.scores}.\n2. Cut the backdrop to {backdrop.size} and stick it on the floor.\n3. Cut the sea wall to {sea wall.size} and stick it across.',
    },
  ],
  find: ({ filled: { cards }, prose }) => {
    const { sentences, cuts } = prose.course()
    if (cuts.size === 0) return []
    return cards.flatMap(({ card }) => {
      if (!card.envelope) return []
      const isMade = sentences.some(
        ({ step, callout, words, measures }) =>
          (step !== undefined || callout === 'ahead') &&
          (measures.some(({ paths }) => paths.some((path) => path.includes('envelope'))) ||
            (/\benvelopes?\b/i.test(words) && made.test(words))),
      )
      if (isMade) return []
      const { make } = card.envelope
      const lines =
        make === 'diagonal'
          ? 'mark it at {envelope.score}'
          : 'score it at {envelope.sides} and {envelope.ends}'
      const place = card.places.get('envelope') ?? card.places.get('fold')
      return [
        {
          rule: 'no-envelope-steps',
          severity: 'warning' as const,
          message: 'The card has an envelope, and no step makes it',
          suggestion: `Add a step: \`Cut a sheet for the envelope, {envelope.sheet}, and ${lines}.\` Or take \`envelope\` out of the card block`,
          ...(place && { place }),
        },
      ]
    })
  },
}
