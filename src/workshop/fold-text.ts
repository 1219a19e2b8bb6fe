import { wordsOf } from '../card/style.ts'
import { sketchLegend, sketchPieces } from '../draw/sketch.ts'
import { listOf } from '../length/finding.ts'
import { formatGrid, formatSize } from '../length/format.ts'
import type { ProvenCard } from '../lesson/lesson.ts'
import { wordingOf } from '../wording/wording.ts'
import { cardCells } from './card-rows.ts'
import { type CatalogueFold, remainderWords } from './catalogue.ts'
import { count, measure, type Section, words } from './listing.ts'
import { sectionText } from './listing-text.ts'
import { mechanismOf } from './mechanism.ts'
import { terminalWidth, wrapText } from './text-columns.ts'

/**
 * One fold for a terminal of 80 columns: its flat pieces drawn, what it takes, and what the card of its starter lesson
 * comes to. Ends with a newline.
 */
export function foldText(fold: CatalogueFold, proven: ProvenCard): string {
  const pieces = mechanismOf(proven.card.structure)
  const { rows, left } = sketchPieces(proven.card, pieces, { columns: terminalWidth - 4, rows: 16 })
  const notDrawn = left.length > 0 ? `; not drawn: ${listOf(left.map(({ name }) => name))}` : ''
  const head = [
    fold.name,
    ...[fold.summary, ...remainderWords(fold)].flatMap((text) => wrapText(text, terminalWidth)),
    '',
    ...rows.map((row) => `  ${row}`),
    ...wrapText(`The flat pieces: ${sketchLegend}${notDrawn}.`, terminalWidth),
  ]
  const sections = [...takes(fold), ...comesTo(fold, proven)].filter((section) => section.rows.length > 0)
  return `${[head.join('\n'), ...sections.map((s) => sectionText(s, terminalWidth))].join('\n\n')}\n`
}

/** What its card block may say. */
const takes = ({ parameters, counts = {}, choices = {}, parts, panels }: CatalogueFold): Section[] => [
  {
    heading: 'Lengths it takes',
    columns: [words('length'), words('usually'), words('what it is')],
    rows: Object.entries(parameters).map(([name, { usual, help }]) => [name, usual, help]),
  },
  {
    heading: 'Counts it takes',
    columns: [words('count'), count('usually'), words('from'), words('what it is')],
    rows: Object.entries(counts).map(([name, { usual, least, most, help }]) => [
      name,
      String(usual),
      `${least} to ${most}`,
      help,
    ]),
  },
  {
    heading: 'Words it takes',
    columns: [words('key'), words('the usual word first'), words('what it is')],
    rows: Object.entries(choices).map(([name, choice]) => [name, listOf(wordsOf(choice), 'or'), choice.help]),
  },
  {
    heading: 'What its card block lists',
    columns: [words('key'), words('what it is')],
    rows: Object.entries(parts),
  },
  {
    heading: 'Panels that layers sit on',
    columns: [words('panel'), words('side they go on unless a layer says otherwise')],
    rows: Object.entries(panels).map(([name, side]) => [name, sideWords[side]]),
  },
]

/** The card of its starter lesson. */
const comesTo = ({ name }: CatalogueFold, proven: ProvenCard): Section[] => [
  {
    heading: 'Pieces of the fold in its starter lesson',
    columns: [words('piece'), count('count'), measure('width × height')],
    rows: mechanismOf(proven.card.structure).map((piece) => [
      piece.name,
      String(piece.count),
      formatSize(piece.size, proven.card.unit),
    ]),
  },
  {
    heading: 'What that card comes to',
    columns: [words('what'), measure('measure')],
    rows: cardCells(proven, wordingOf('en-GB', proven.card.unit)).slice(1),
    note: `Measured on a ruler of ${formatGrid(proven.card.grid)}. \`foldlore new ${quoted(name)}\` writes that lesson.`,
  },
]

/** As a layer's `side:` says it. */
const sideWords = { face: 'inside', back: 'outside' } as const

/** A name as a command line takes it. */
const quoted = (name: string): string => (name.includes(' ') ? `"${name}"` : name)
