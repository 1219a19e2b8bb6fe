import { wordsOf } from '../card/style.ts'
import { sketchLegend, sketchPieces } from '../draw/sketch.ts'
import { listOf } from '../length/finding.ts'
import { type CatalogueFold, groupsOf } from './catalogue.ts'
import { mechanismOf } from './mechanism.ts'
import { starterCard } from './starter-card.ts'
import { beside, terminalWidth, wrapText } from './text-columns.ts'

/** Where the words about a fold begin, beside its sketch; the sketch has the room before, less what sets it in and off. */
const wordsAt = 41
const room = { columns: wordsAt - 6, rows: 6 }

/** The catalogue for a terminal of 80 columns: each fold with a small drawing of its flat pieces. Ends with a newline. */
export function catalogueText(folds: readonly CatalogueFold[]): string {
  const head = [
    'Folds',
    `The flat pieces: ${sketchLegend}.`,
    '`foldlore folds NAME` shows one of them, `foldlore new NAME` writes a starter lesson for it.',
  ]
  const groups = groupsOf(folds).map(({ title, folds: own }) => [title, ...own.map(foldText)].join('\n\n'))
  return `${[head.flatMap((line) => wrapText(line, terminalWidth)).join('\n'), ...groups].join('\n\n')}\n`
}

function foldText(fold: CatalogueFold): string {
  const card = starterCard(fold, 'in')
  const { rows, left } = sketchPieces(card, mechanismOf(card.structure), room)
  const said = [
    fold.summary,
    ...takes(fold),
    ...(left.length > 0 ? [`not drawn: ${listOf(left.map(({ name }) => name))}`] : []),
  ]
  const lines = said.flatMap((line) => wrapText(line, terminalWidth - wordsAt))
  return [
    `  ${fold.name}`,
    ...beside(
      rows.map((row) => `    ${row}`),
      lines,
      wordsAt,
    ),
  ].join('\n')
}

/** What its card block may say, by name. */
function takes({ parameters, counts = {}, choices = {}, parts }: CatalogueFold): string[] {
  const lengths = Object.keys(parameters)
  return [
    ...(lengths.length > 0 ? [`lengths: ${lengths.join(', ')}`] : []),
    ...Object.entries(counts).map(([name, { least, most }]) => `${name}: ${least} to ${most}`),
    ...Object.entries(choices).map(([name, choice]) => `${name}: ${listOf(wordsOf(choice), 'or')}`),
    ...(Object.keys(parts).length > 0 ? [`lists: ${Object.keys(parts).join(', ')}`] : []),
  ]
}
