import { suggestWord } from '../../length/finding.ts'
import { stocksOf } from '../stocks.ts'
import type { Rule } from './rule.ts'

/** A sheet is told for a stock that the lesson does not have. */
export const sheetStock: Rule = {
  docs: [
    {
      name: 'unknown-stock',
      about: 'The front matter says the sheet of a stock that nothing is cut from.',
      example:
        '---\ntitle: An example\nsheets: {blue crad: 12 x 12 in}\n---\n\n```card\nfold: side\nclosed: 5 x 7 in\nbase: {stock: blue card}\n```\n\n1. Cut the base to {base.size}.',
    },
  ],
  find: ({ filled: { frontMatter, cards }, complete }) => {
    if (!complete) return []
    const stocks = stocksOf(cards)
    return (frontMatter.sheets ?? []).flatMap(({ stock, place }) =>
      stock === undefined || stocks.includes(stock)
        ? []
        : [
            {
              rule: 'unknown-stock',
              severity: 'warning' as const,
              message: `Nothing is cut from \`${stock}\``,
              suggestion: suggestWord(stock, stocks),
              place,
            },
          ],
    )
  },
}
