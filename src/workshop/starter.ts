import type { Card } from '../card/card.ts'
import { checkCard } from '../card/check.ts'
import { hingesOf } from '../card/scores.ts'
import type { Piece, Structure } from '../card/structure.ts'
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
    ...(bends.length > 0
      ? [[`Fold ${listOf(bends)}. Press every fold flat, and shut the card. :minutes[5]`, shut] as const]
      : []),
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

/** How the creases of a piece are folded: the valleys, and the mountains. */
function bendsOf(structure: Structure, piece: string): string[] {
  const folds = new Set(hingesOf(structure, piece).map((hinge) => hinge.fold))
  return [
    ...(folds.has('valley') ? [`the valleys at {${piece}.valleys} towards you`] : []),
    ...(folds.has('mountain') ? [`the mountains at {${piece}.mountains} away from you`] : []),
  ]
}

function cutStep({ name, count, cuts }: Piece, structure: Structure): Step {
  const [cut, it] =
    count > 1
      ? [`Cut {${name}.count} of the ${name}, each {${name}.size},`, 'them']
      : [`Cut the ${name}, {${name}.size},`, 'it']
  const isScored = hingesOf(structure, name).length > 0
  const score = isScored ? ` Score ${it} on the scoring board at {${name}.scores}.` : ''
  const open = cuts.length > 0 ? ' Cut along the lines inside as drawn.' : ''
  return [
    `${cut} with the paper trimmer.${score}${open} :minutes[5]`,
    `::figure[The ${name}, ${isScored ? 'scored' : 'cut'}]{show=flat of="${name}"}`,
  ]
}

function stickStep(piece: Piece, structure: Structure): Step {
  const { name, kind, count } = piece
  const own = new Set(structure.plates.filter((p) => p.piece === name).map((p) => p.name))
  const onto = new Set(structure.bonds.filter((b) => own.has(b.plate)).map((b) => `the ${b.onto}`))
  const stick =
    onto.size > 0 ? ` Stick ${count > 1 ? 'them' : 'it'} to ${listOf([...onto])} with double-sided tape.` : ''
  if (kind === 'base') {
    const bends = bendsOf(structure, name)
    const [text, figure] = cutStep(piece, structure)
    const fold = bends.length > 0 ? ` Fold ${listOf(bends)}.` : ''
    // A plain part of the mechanism, such as a front, has nothing to draw, and no place of its own to be drawn in.
    return [
      text.replace(' :minutes', `${fold}${stick} :minutes`),
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
