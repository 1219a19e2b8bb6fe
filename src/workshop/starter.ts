import type { Card } from '../card/card.ts'
import { checkCard } from '../card/check.ts'
import { hingesOf, scoresOf } from '../card/scores.ts'
import { slantsOf } from '../card/slants.ts'
import type { Fold, Piece, Structure } from '../card/structure.ts'
import type { FoldStyle } from '../card/style.ts'
import { listOf } from '../length/finding.ts'
import { usualGrid } from '../length/grid.ts'

/** A whole lesson for a fold, with its starter card: every piece is cut and stuck, every figure is there. */
export function starterLesson(style: Pick<FoldStyle, 'name' | 'summary' | 'starter'>): string {
  const place = { line: 1, column: 1, offset: 0 }
  const { card, findings } = checkCard(
    { name: 'card', text: style.starter, place },
    { unit: 'in', grid: usualGrid.in },
  )
  if (!card)
    throw new Error(`The starter of \`${style.name}\` has mistakes: ${findings.map((f) => f.message)}`)
  return [front(style), '```card', style.starter, '```', '', supplies, '', ...steps(card), ''].join('\n')
}

const front = ({ name, summary }: Pick<FoldStyle, 'name' | 'summary'>): string => `---
title: ${name[0]?.toUpperCase()}${name.slice(1)} card
summary: ${JSON.stringify(summary)}
level: beginner
units: in
---

Say here what the card is, and for whom it is made.
`

const supplies = `\`\`\`supplies
each:
  double-sided tape: base.width * 3
shared:
  scoring board: 1 per 3
  paper trimmer: 1 per 3
tutor:
  finished sample: 1
\`\`\``

function steps({ structure, fold }: Card): string[] {
  const [base, ...others] = structure.pieces
  const bends = base ? bendsOf(structure, base.name) : []
  const shut = '::figure[Shut]{show=closed}'
  const list: Step[] = [
    ...(base ? [cutStep(base, structure)] : []),
    ...(base && bends.length > 0 ? [foldStep(base.name, structure)] : []),
    ...others.map((piece) => stickStep(piece, structure)),
    [
      'Shut the card once, and look whether every edge lies inside it. :minutes[2]',
      bends.length > 0 ? '::figure[Done]{show=standing}' : shut,
    ],
  ]
  const numbered = list.flatMap(([text, figure], i) => [
    `${i + 1}. ${text}`,
    '',
    ...(figure ? [`   ${figure}`, ''] : []),
  ])
  return [`## Make the ${fold} card`, '', ...numbered].slice(0, -1)
}

type Step = readonly [text: string, figure: string]

/** Folding the base, sticking what makes a ring of it, and shutting it for the first time. */
function foldStep(base: string, structure: Structure): Step {
  const glue = glueOf(structure, base)
  return [
    `Fold ${listOf(bendsOf(structure, base))}. Press every fold flat${glue ? `.${glue} Then` : ', and'} shut the card. :minutes[5]`,
    '::figure[Shut]{show=closed}',
  ]
}

/** How the creases of a piece are folded: the valleys, and the mountains; and where, if one ruler tells. */
function bendsOf(structure: Structure, piece: string): string[] {
  const hinges = hingesOf(structure, piece)
  const isOneWay = scoreWays(structure, piece).length === 1
  const at = (part: string): string => (isOneWay ? ` at {${piece}.${part}}` : '')
  const has = (fold: Fold): boolean => hinges.some((hinge) => hinge.fold === fold)
  return [
    ...(has('valley') ? [`the valleys${at('valleys')} towards you`] : []),
    ...(has('mountain') ? [`the mountains${at('mountains')} away from you`] : []),
  ]
}

/** The ways to measure the score lines of a piece: from one edge, from both, and by the ends of slanting ones. */
function scoreWays(structure: Structure, piece: string): string[] {
  const hinges = hingesOf(structure, piece)
  const ways = new Set(scoresOf(hinges).map(({ along }) => along))
  const straight =
    ways.size > 1
      ? [`at {${piece}.uprights} from the left edge`, `at {${piece}.levels} from the lower edge`]
      : [...ways].map(() => `at {${piece}.scores}`)
  return [...straight, ...(slantsOf(hinges).length > 0 ? [`{${piece}.slants}`] : [])]
}

/** Panels of a piece that are stuck on others of it, such as the tab that makes a ring. */
function glueOf({ plates, bonds }: Structure, piece: string): string {
  const own = new Set(plates.filter((plate) => plate.piece === piece).map(({ name }) => name))
  const inner = bonds.filter(({ plate, onto }) => own.has(plate) && own.has(onto))
  const stuck = inner.map(({ plate, onto }) => `the ${plate} on the ${onto}`)
  return stuck.length > 0 ? ` Stick ${listOf(stuck)} with double-sided tape.` : ''
}

function cutStep({ name, count, cuts }: Piece, structure: Structure): Step {
  const [cut, it] =
    count > 1
      ? [`Cut {${name}.count} of the ${name}, each {${name}.size},`, 'them']
      : [`Cut the ${name}, {${name}.size},`, 'it']
  const ways = scoreWays(structure, name)
  const isScored = ways.length > 0
  const score = isScored ? ` Score ${it} on the scoring board ${listOf(ways)}.` : ''
  const open = cuts.length > 0 ? ' Cut along the solid lines as drawn.' : ''
  return [
    `${cut} with the paper trimmer.${score}${open} :minutes[5]`,
    `::figure[The ${name}, ${isScored ? 'scored' : 'cut'}]{show=flat of="${name}"}`,
  ]
}

function stickStep(piece: Piece, structure: Structure): Step {
  const { name, kind, count } = piece
  const onto = partnersOf(piece, structure)
  const stick =
    onto.length > 0 ? ` Stick ${count > 1 ? 'them' : 'it'} to ${listOf(onto)} with double-sided tape.` : ''
  if (kind === 'base') {
    const bends = bendsOf(structure, name)
    const [text, figure] = cutStep(piece, structure)
    const fold = bends.length > 0 ? ` Fold ${listOf(bends)}.` : ''
    // A plain part of the mechanism, such as a front, has nothing to draw, and no place of its own to be drawn in.
    return [
      text.replace(' :minutes', `${fold}${glueOf(structure, name)}${stick} :minutes`),
      bends.length > 0 || piece.cuts.length > 0 ? figure : '',
    ]
  }
  const cut =
    count > 1 ? `Cut {${name}.count} of the ${name}, each {${name}.size}` : `Cut the ${name}, {${name}.size}`
  return [
    `${cut}.${stick} :minutes[5]`,
    kind === 'loose' ? '' : `::figure[Where the ${name} goes]{show=place of="${name}"}`,
  ]
}

/** The panels of pieces listed before this one that it is stuck to. */
function partnersOf({ name }: Piece, { pieces, plates, bonds }: Structure): string[] {
  const before = new Set(
    pieces
      .slice(
        0,
        pieces.findIndex((piece) => piece.name === name),
      )
      .map((p) => p.name),
  )
  const pieceOf = new Map(plates.map((plate) => [plate.name, plate.piece]))
  const partners = bonds.flatMap(({ plate, onto }) => {
    const [mine, other] = pieceOf.get(plate) === name ? [plate, onto] : [onto, plate]
    return pieceOf.get(mine) === name && before.has(pieceOf.get(other) ?? '') ? [`the ${other}`] : []
  })
  return [...new Set(partners)]
}
