import type { Card } from '../card/card.ts'
import { checkCard } from '../card/check.ts'
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
  const [, ...others] = structure.pieces
  const folds = new Set(structure.hinges.map((h) => h.fold))
  const bend = [
    ...(folds.has('valley') ? ['the valleys at {base.valleys} towards you'] : []),
    ...(folds.has('mountain') ? ['the mountains at {base.mountains} away from you'] : []),
  ]
  const list = [
    [
      'Cut the base, {base.size}, with the paper trimmer. Score it on the scoring board at {base.scores}. :minutes[5]',
      '::figure[The base, scored]{show=flat of=base}',
    ],
    [
      `Fold ${listOf(bend)}. Press every fold flat, and shut the card. :minutes[5]`,
      '::figure[Shut]{show=closed}',
    ],
    ...others.map((piece) => stickStep(piece, structure)),
    [
      'Shut the card once, and look whether every edge lies inside it. :minutes[2]',
      '::figure[Done]{show=standing}',
    ],
  ]
  const numbered = list.flatMap(([text, figure], i) => [
    `${i + 1}. ${text}`,
    '',
    ...(figure ? [`   ${figure}`, ''] : []),
  ])
  return [`## Make the ${fold} card`, '', ...numbered].slice(0, -1)
}

function stickStep(
  { name, kind, count }: Piece,
  { plates, bonds }: Structure,
): [text: string, figure: string] {
  const own = new Set(plates.filter((p) => p.piece === name).map((p) => p.name))
  const on = listOf(bonds.filter((b) => own.has(b.plate)).map((b) => `the ${b.onto}`))
  const cut =
    count > 1 ? `Cut {${name}.count} of the ${name}, each {${name}.size}` : `Cut the ${name}, {${name}.size}`
  return [
    `${cut}. Stick ${count > 1 ? 'them' : 'it'} to ${on} with double-sided tape. :minutes[5]`,
    // A loose part of the mechanism, such as a front, has no place of its own to be drawn in.
    kind === 'loose' || kind === 'base' ? '' : `::figure[Where the ${name} goes]{show=place of="${name}"}`,
  ]
}
