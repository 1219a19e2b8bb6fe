import { listOf, suggestWord } from '../../length/finding.ts'
import { figureNames, figureTargets } from '../figure-target.ts'
import { placeOf } from '../source.ts'
import type { Rule } from './rule.ts'

/** `unknown-piece`, `ambiguous-name`: what a figure is to show does not exist, or exists more than once. */
export const figurePiece: Rule = ({ filled: { cards }, figures, complete }) =>
  figures.flatMap(({ of, data, position }) => {
    if (of === undefined || cards.length === 0) return []
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
        message: `Unexpected name \`${of}\`, expected a piece of the card`,
        suggestion: suggestWord(of, [...new Set(names)]),
        place,
      },
    ]
  })
