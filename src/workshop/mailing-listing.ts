import { type Fit, snuggest } from '../card/envelopes/fits.ts'
import { fullName, type Series } from '../card/envelopes/standard.ts'
import type { Mailing } from '../card/mailing.ts'
import { formatSize } from '../length/format.ts'
import { fitInside, usualGrid } from '../length/grid.ts'
import type { Size, Unit } from '../length/length.ts'
import { measure, type Section, words } from './listing.ts'

/** Which bought envelopes take the shut card, and how it posts. */
export const mailingSections = ({ fits, post }: Mailing): Section[] => [
  {
    heading: 'Envelopes to buy',
    columns: [words('envelope'), measure('size'), measure('larger than the card by'), words('fit')],
    rows: (['ISO 269', 'US trade'] as const).flatMap((series) =>
      snuggest(fits, series).map((fit) => fitRow(fit, unitOf[series])),
    ),
    note: 'The smallest that take the shut card. US names such as A6 are not the ISO sheets of that name.',
  },
  {
    heading: 'By post',
    columns: [
      words('where'),
      words('in'),
      words('posts as'),
      words('up to'),
      words('because'),
      words('figures'),
    ],
    rows: post.map(({ country, inside, name, weight = '', why, asOf }) => [
      country,
      inside,
      name,
      weight,
      why.join('; '),
      asOf,
    ]),
    note: 'Limits change: ask the carrier before you post. In the US a letter that is stiff, lumpy or wrapped in plastic is nonmachinable too.',
  },
]

/** Bought envelopes are told in the unit in which they are sold. */
const unitOf: Record<Series, Unit> = { 'ISO 269': 'mm', 'US trade': 'in' }

function fitRow({ envelope, room, tight }: Fit, unit: Unit): string[] {
  const mark = ({ width, height }: Size): Size => ({
    width: fitInside(width, usualGrid[unit]),
    height: fitInside(height, usualGrid[unit]),
  })
  return [
    fullName(envelope),
    formatSize(envelope.size, unit),
    formatSize(mark(room), unit),
    tight ? 'tight: lists of sizes differ' : '',
  ]
}
