import { formatBare, formatLength, formatSize } from '../../length/format.ts'
import { type Size, same, type Unit, zero } from '../../length/length.ts'
import { count, measure, type Section, words } from '../listing.ts'
import type { StockLayouts } from './answer.ts'
import type { Cut } from './cutting/cut-from.ts'
import { nameOf } from './paper-limit.ts'

/** Where the pieces of a stock lie on its paper, and the cuts, as two tables for each sheet. */
export const cuttingSections = ({ supply, layouts }: StockLayouts, unit: Unit): Section[] =>
  layouts.flatMap(({ sheet, placed, cuts }): Section[] => {
    const given = supply.sheets[sheet]
    if (!given) return []
    return [
      {
        heading: `On ${given.text} of ${nameOf(supply)}`,
        columns: [
          words('piece'),
          measure('width × height'),
          measure('from the left'),
          measure('from the lower edge'),
          words(''),
        ],
        rows: placed.map(({ name, x, y, width, height, turned }) => [
          name,
          formatSize({ width, height }, unit),
          formatLength(x, unit),
          formatLength(y, unit),
          turned ? 'turned a quarter' : '',
        ]),
      },
      ...(cuts.length > 0 ? [cutsSection(cuts, given.size, unit)] : []),
    ]
  })

function cutsSection(cuts: readonly Cut[], sheet: Size, unit: Unit): Section {
  return {
    heading: 'Its cuts, in this order',
    columns: [count('cut'), measure('trimmer at'), words('from'), words('where on the sheet')],
    rows: cuts.map(({ across, at, set, from, to }, i) => {
      const end = across === 'width' ? sheet.height : sheet.width
      const whole = same(from, zero) && same(to, end)
      const where = across === 'width' ? 'across' : 'up'
      const along = across === 'width' ? 'up' : 'across'
      return [
        String(i + 1),
        formatLength(set, unit),
        across === 'width' ? 'the left edge' : 'the lower edge',
        whole
          ? 'right through'
          : `${formatLength(at, unit)} ${where}, from ${formatBare(from, unit)} to ${formatLength(to, unit)} ${along}`,
      ]
    }),
    note: 'Set the trimmer from the edge of what is in hand. Each cut goes right through it.',
  }
}
