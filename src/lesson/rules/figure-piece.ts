import { listOf, suggestWord } from '../../length/finding.ts'
import { figureNames, figureTargets } from '../figure-target.ts'
import { placeOf } from '../source.ts'
import { stocksOf } from '../stocks.ts'
import type { Rule } from './rule.ts'

const twoCards = `\`\`\`card
fold: side
closed: 5 x 7 in
\`\`\`

\`\`\`card small
fold: side
closed: 3 x 4 in
\`\`\`

1. Cut both and score them.

   ::figure[The base]{show=flat of=base}`

/** What a figure is to show does not exist, or exists more than once. */
export const figurePiece: Rule = {
  docs: [
    {
      name: 'unknown-piece',
      about: 'A figure is to show a piece that the card does not have.',
      example: '1. Stick the backdrop on the floor.\n\n   ::figure[The backdrop]{show=place of=bakdrop}',
    },
    {
      name: 'ambiguous-name',
      about: 'A figure is to show a piece that several cards have.',
      example: twoCards,
    },
  ],
  find: ({ filled: { cards }, figures, complete }) =>
    figures.flatMap(({ show, of, data, position }) => {
      if (of === undefined || cards.length === 0) return []
      const stocks = show === 'sheet' ? stocksOf(cards) : []
      if (stocks.includes(of)) return []
      const targets = figureTargets(of, cards)
      const place = data?.ofPlace ?? placeOf(position)
      if (targets.length > 1)
        return [
          {
            rule: 'ambiguous-name',
            severity: 'error' as const,
            message: `\`${of}\` is a piece of ${targets.length} cards`,
            suggestion: `Write ${listOf(
              targets.map(({ card }) => `\`of="${card.card.name}.${of}"\``),
              'or',
            )}`,
            place,
          },
        ]
      if (targets.length === 1 || !complete) return []
      const known = cards.flatMap(({ card }) => figureNames(card))
      const names = cards.length > 1 ? [...known, ...cards.map(({ card }) => card.name)] : known
      return [
        {
          rule: 'unknown-piece',
          severity: 'error' as const,
          message: `Unexpected name \`${of}\`, expected ${show === 'sheet' ? 'a stock or a piece' : 'a piece'} of the card`,
          suggestion: suggestWord(of, [...new Set([...stocks, ...names])]),
          place,
        },
      ]
    }),
}
