import { toHtml } from 'hast-util-to-html'
import { h } from 'hastscript'
import { wordsOf } from '../card/style.ts'
import { listOf } from '../length/finding.ts'
import { formatBare, formatGrid, formatLength, formatSize } from '../length/format.ts'
import { usualGrid } from '../length/grid.ts'
import type { Unit } from '../length/length.ts'
import type { ProvenCard } from '../lesson/lesson.ts'
import { wordingOf } from '../wording/wording.ts'
import { atMark } from '../workshop/card-measures.ts'
import { type CatalogueFold, groupsOf, remainderWords } from '../workshop/catalogue.ts'
import { movementWords } from '../workshop/movement.ts'
import { provenStarter } from '../workshop/starter-card.ts'
import { type FoldFigures, foldFigures, lineKey } from './catalogue-figures.ts'
import { type Html, html } from './html-text.ts'
import { measureHast } from './measure.ts'
import { measureHtml } from './measure-html.ts'
import type { PageHead } from './page-html.ts'

/** Something that the card block of a fold may say. */
export interface KeyView {
  readonly name: string
  readonly help: Html
  /** What it usually is, or may be; null for what is listed. */
  readonly value: Html | null
}

/** One fold of the catalogue, drawn and measured as the card of its starter lesson. */
export interface FoldView {
  readonly number: number
  readonly name: string
  readonly id: string
  readonly summary: Html
  readonly figures: FoldFigures
  readonly facts: readonly { readonly what: string; readonly measure: Html }[]
  readonly keys: readonly KeyView[]
  /** The command that writes its starter lesson. */
  readonly starter: string
}

/** Everything that the template of the catalogue gets. */
export interface CatalogueView extends PageHead {
  /** `inches` or `millimetres`. */
  readonly unit: string
  readonly grid: Html
  readonly lines: Html
  /** Whether there are several folds, so that a list of contents helps. */
  readonly several: boolean
  readonly groups: readonly {
    readonly title: string
    readonly id: string
    readonly folds: readonly FoldView[]
  }[]
}

/** The catalogue with its drawings, in one unit. */
export function catalogueView(folds: readonly CatalogueFold[], unit: Unit): CatalogueView {
  const unitWords = unit === 'in' ? 'inches' : 'millimetres'
  const groups = groupsOf(folds)
  const order = groups.flatMap((group) => group.folds)
  const several = folds.length > 1
  const title = several ? 'The folds' : `The fold: ${folds[0]?.name}`
  return {
    title,
    lang: 'en',
    foot: { title, print: `Measures in ${unitWords}` },
    unit: unitWords,
    grid: measureHtml(formatGrid(usualGrid[unit])),
    lines: lineKey(),
    several,
    groups: groups.map((group, i) => ({
      title: group.title,
      id: `group-${i + 1}`,
      folds: group.folds.map((fold) => foldView(fold, order.indexOf(fold) + 1, unit)),
    })),
  }
}

function foldView(fold: CatalogueFold, number: number, unit: Unit): FoldView {
  const proven = provenStarter(fold, unit)
  const id = `fold-${number}`
  return {
    number,
    name: fold.name,
    id,
    summary: textHtml([fold.summary, ...remainderWords(fold)].join(' ')),
    figures: foldFigures(proven, unit, id),
    facts: [...cardFacts(proven), ...panelFacts(fold)].map(({ what, measure }) => ({
      what,
      measure: measureHtml(measure),
    })),
    keys: keysOf(fold),
    starter: `foldlore new ${fold.name.includes(' ') ? `"${fold.name}"` : fold.name}`,
  }
}

interface Fact {
  readonly what: string
  readonly measure: string
}

/** What the card comes to. */
function cardFacts({ card, proof }: ProvenCard): Fact[] {
  const { unit, grid, structure } = card
  const { closed, standing } = proof
  const length = (x: number) => formatBare(atMark(x, grid), unit)
  const deep = closed?.isFlat ? 'thick' : 'deep'
  return [
    ...(closed
      ? [
          {
            what: 'shut',
            measure: `${formatSize(closed.size, unit)}, ${formatLength(closed.thickness, unit)} ${deep}`,
          },
        ]
      : []),
    ...(standing
      ? [
          {
            what: 'standing',
            measure: `${length(standing.width)} × ${length(standing.height)} ${unit}, ${length(standing.depth)} ${unit} deep`,
          },
        ]
      : []),
    { what: 'how it moves', measure: movementWords(structure, proof, wordingOf('en-GB', unit)) },
  ]
}

/** Which panels layers sit on, side by side of the card. */
const panelFacts = ({ panels }: CatalogueFold): Fact[] =>
  (['back', 'face'] as const).flatMap((side) => {
    const names = Object.keys(panels).filter((name) => panels[name] === side)
    const what = `layers ${side === 'face' ? 'inside' : 'outside'}`
    return names.length > 0 ? [{ what, measure: names.join(', ') }] : []
  })

const keysOf = ({ parameters, counts = {}, choices = {}, parts }: CatalogueFold): KeyView[] =>
  [
    ...Object.entries(parameters).map(([name, { usual, help }]) => [name, help, `usually ${joined(usual)}`]),
    ...Object.entries(counts).map(([name, { usual, least, most, help }]) => [
      name,
      help,
      `usually ${usual}, from ${least} to ${most}`,
    ]),
    ...Object.entries(choices).map(([name, choice]) => [name, choice.help, listOf(wordsOf(choice), 'or')]),
    ...Object.entries(parts).map(([name, help]) => [name, help]),
  ].map(([name = '', help = '', value]) => ({
    name,
    help: textHtml(help),
    value: value === undefined ? null : measureHtml(value),
  }))

/** An expression does not break at its operators. */
const joined = (expression: string): string => expression.replaceAll(/ ([-+*/]) /g, '\u00a0$1\u00a0')

/** A text in which backticks set words of the card block apart. */
const textHtml = (text: string): Html =>
  html(
    toHtml({
      type: 'root',
      children: text.split('`').flatMap((part, i) => (i % 2 === 1 ? [h('code', part)] : measureHast(part))),
    }),
  )
