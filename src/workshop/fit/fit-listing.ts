import { listOf } from '../../length/finding.ts'
import { formatGrid, formatLength, formatSize } from '../../length/format.ts'
import { fitInside, mustCover, nearest, usualGrid } from '../../length/grid.ts'
import { type Length, type Size, same, shorter, type Unit, zero } from '../../length/length.ts'
import { type Listing, measure, type Section, withoutEmptyColumns, words } from '../listing.ts'
import type { Answer, FoundSize, NextSize } from './answer.ts'
import { largestSide, smallestSide } from './candidates.ts'
import { cuttingSections } from './cutting-sections.ts'
import { lyingAs } from './envelope-limit.ts'
import { nameOf } from './paper-limit.ts'

/** The answer as tables for people. */
export function fitListing(answer: Answer): Listing {
  const { lesson, unit, asked, next, otherShape, ranges, nearest: near } = answer
  // Where only the lettering was asked for, the largest card is where the search ends, and tells nobody anything.
  const endless = ranges.length > 0 && asked.supplies.length === 0 && !asked.envelope && !asked.whole
  const found = endless ? undefined : answer.found
  const sections: Section[] = [
    ...ranges.map((range): Section => rangeSection(range, unit)),
    ...(found ? [foundSection(headingOf(answer), found, answer)] : []),
    ...(next && found ? [whySection('One mark larger', next, unit)] : []),
    ...(otherShape ? [foundSection('In another shape the sheet is used whole', otherShape, answer)] : []),
    ...(near ? [whySection('Nothing fits: what comes nearest', near, unit)] : []),
    ...(found ? found.cutting.flatMap((one) => cuttingSections(one, unit)) : []),
    ...(found && found.warnings.length > 0 ? [warningSection(found)] : []),
  ]
  return { title: lesson, intro: introOf(answer), sections: sections.map(withoutEmptyColumns) }
}

const headingOf = ({ asked, found, alike }: Answer): string =>
  asked.whole
    ? found?.use?.whole
      ? `The ${alike.length > 0 ? 'largest ' : ''}size whose ${asked.whole.piece} uses the sheet whole`
      : `The size whose ${asked.whole.piece} uses most of the sheet`
    : 'The largest card'

function introOf(answer: Answer): string {
  const { searched, grid, unit } = answer
  const kept = {
    proportions: 'in the proportions of the lesson',
    width: 'of this width',
    height: 'of this height',
  }
  const [least, most] = [smallestSide, largestSide].map((x) =>
    formatLength(nearest(x, usualGrid[unit]), unit),
  )
  return `${askedText(answer)} Every size ${kept[searched.keeps]} was tried, ${searched.sizes} of them, from ${least} to ${most} a side on a ruler of ${formatGrid(grid)}. Only sizes at which the lesson has no errors count.`
}

/** What was asked, as it was understood. */
function askedText({ asked: { supplies, envelope, whole, lettering } }: Answer): string {
  const papers = supplies.map(({ sheets }) => listOf(sheets.map(({ text }) => text)))
  const together = supplies.length > 1 && new Set(papers).size === 1
  const paper = together
    ? [`each of ${listOf(supplies.map(nameOf))} comes out of ${papers[0]}`]
    : supplies.map((supply, i) => `${nameOf(supply)} comes out of ${papers[i]}`)
  const wanted = [
    ...paper,
    ...(envelope ? [`the card goes into ${envelope.name}`] : []),
    ...(whole ? [`\`${whole.piece}\` uses ${whole.sheet.text} as far as it goes`] : []),
    ...(lettering ? ['the lettering fits'] : []),
  ]
  return wanted.length > 0 ? `Asked for: ${listOf(wanted)}.` : ''
}

/** `6 1/8 × 4 3/8 in (about 156 × 111 mm)`. */
function inBothUnits(size: Size, unit: Unit): string {
  const other = unit === 'in' ? 'mm' : 'in'
  const mark = usualGrid[other]
  const round = { width: nearest(size.width, mark), height: nearest(size.height, mark) }
  const about = same(round.width, size.width) && same(round.height, size.height) ? '' : 'about '
  return `${formatSize(size, unit)} (${about}${formatSize(round, other)})`
}

function foundSection(heading: string, found: FoundSize, { asked, unit, grid, alike }: Answer): Section {
  const { envelope, whole } = asked
  const { closed, thickness, room, use } = found
  const left = use && leftOver(found, asked.whole?.sheet.size, unit, grid)
  return {
    heading,
    columns: [words('what'), measure('measure')],
    rows: [
      ['shut', inBothUnits(closed, unit)],
      ...alike.map((size) => ['or shut', inBothUnits(size, unit)]),
      ['thick when shut', formatLength(mustCover(thickness, grid), unit)],
      ...(envelope
        ? [
            [
              'envelope',
              `${envelope.name}, ${formatSize(lyingAs(envelope.size, closed), unitFor(envelope.size, unit))}`,
            ],
          ]
        : []),
      ...(room ? [['larger than the card by', formatSize(roomAs(room, closed, grid), unit)]] : []),
      ...(use && whole
        ? [
            [whole.piece, `${formatSize(use.piece, unit)}${use.turned ? ', turned a quarter' : ''}`],
            ['used of the sheet', use.whole ? 'all of it' : `${Math.floor(use.share * 1000) / 10} %`],
            ...(left ?? []),
          ]
        : []),
    ],
    ...(envelope?.note && { note: envelope.note }),
  }
}

/** The room of the shorter and the longer side, as width and height of the card. */
function roomAs(room: Size, card: Size, grid: Length): Size {
  const [short, long] = [fitInside(room.width, grid), fitInside(room.height, grid)]
  return shorter(card.height, card.width) ? { width: long, height: short } : { width: short, height: long }
}

/** The strips that are left of the sheet when the piece lies in its lower left corner. */
function leftOver(
  { use }: FoundSize,
  sheet: Size | undefined,
  unit: Unit,
  grid: Length,
): string[][] | undefined {
  if (!use || !sheet || use.whole) return undefined
  const strip = (size: Size): string =>
    formatSize({ width: fitInside(size.width, grid), height: fitInside(size.height, grid) }, unit)
  return [
    ...(shorter(zero, use.beside)
      ? [['left over at the side', strip({ width: use.beside, height: sheet.height })]]
      : []),
    ...(shorter(zero, use.above)
      ? [['left over above it', strip({ width: use.piece.width, height: use.above })]]
      : []),
  ]
}

/** Envelopes are told in the unit in which they are round. */
const unitFor = ({ width, height }: Size, unit: Unit): Unit => {
  const round = (u: Unit): boolean => [width, height].every((x) => same(x, nearest(x, usualGrid[u])))
  return round(unit) ? unit : round('mm') ? 'mm' : round('in') ? 'in' : unit
}

const whySection = (heading: string, { closed, misses }: NextSize, unit: Unit): Section => ({
  heading: `${heading}, ${formatSize(closed, unit)}`,
  columns: [words('what'), words('')],
  rows:
    misses.length > 0
      ? misses.flatMap(({ message, suggestion }) => [
          ['in the way', message],
          ...(suggestion === undefined ? [] : [['would help', suggestion]]),
        ])
      : [['in the way', 'nothing: it can be made too, but it gets less out of the sheet']],
})

function rangeSection({ from, to, below, above }: Answer['ranges'][number], unit: Unit): Section {
  const why = (next: NextSize | undefined): string =>
    next
      ? `at ${formatSize(next.closed, unit)}: ${next.misses.map(({ message }) => message).join('; ')}`
      : 'the search ends there'
  return {
    heading: `The lettering fits from ${formatSize(from, unit)} to ${formatSize(to, unit)}`,
    columns: [words('what'), words('')],
    rows: [
      ['smallest', inBothUnits(from, unit)],
      ['below', why(below)],
      ['largest', inBothUnits(to, unit)],
      ['above', why(above)],
    ],
  }
}

const warningSection = ({ warnings }: FoundSize): Section => ({
  heading: 'Worth a look at this size',
  columns: [words('what'), words('')],
  rows: warnings.flatMap(({ message, suggestion }) => [
    ['look at', message],
    ...(suggestion === undefined ? [] : [['would help', suggestion]]),
  ]),
})
