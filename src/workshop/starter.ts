import type { Card } from '../card/card.ts'
import type { FoldStyle } from '../card/style.ts'
import { starterCard } from './starter-card.ts'
import { stepsOf } from './starter-steps.ts'
import { isFoamed, toolsFor } from './starter-tools.ts'

/** A whole lesson for a fold, with its starter card: every piece is cut, folded and stuck, every figure is there. */
export function starterLesson(style: Pick<FoldStyle, 'name' | 'summary' | 'starter'>): string {
  const card = starterCard(style, 'in')
  const steps = stepsOf(card).flatMap(({ text, below }, i) => [
    `${i + 1}. ${text}`,
    '',
    ...below.flatMap((block) => [...block.split('\n').map((line) => `   ${line}`), '']),
  ])
  return [
    front(style),
    '```card',
    style.starter,
    '```',
    '',
    supplies(card),
    '',
    `## Make the ${thingOf(style.name)}`,
    '',
    ...steps,
  ].join('\n')
}

/** `v-fold card`; but a `box card`, a `match box` and a `belly band` say what they are. */
const thingOf = (fold: string): string => (/(card|box|band)$/.test(fold) ? fold : `${fold} card`)

const front = ({ name, summary }: Pick<FoldStyle, 'name' | 'summary'>): string => `---
title: ${name[0]?.toUpperCase()}${thingOf(name).slice(1)}
summary: ${JSON.stringify(summary)}
level: beginner
units: in
---

Say here what it is, and for whom it is made.
`

function supplies(card: Card): string {
  const { structure } = card
  const tools = new Set(structure.pieces.flatMap((piece) => toolsFor(card, piece)))
  const foam = structure.pieces.some((piece) => isFoamed(structure, piece))
  return [
    '```supplies',
    'each:',
    '  double-sided tape: base.width * 3',
    ...(foam ? ['  foam tape: a little'] : []),
    'shared:',
    '  scoring board: 1 per 3',
    '  paper trimmer: 1 per 3',
    ...(tools.has('knife') ? ['  craft knife: 1 per 2', '  cutting mat: 1 per 2'] : []),
    ...(tools.has('scissors') ? ['  scissors: 1 per 2'] : []),
    'tutor:',
    '  finished sample: 1',
    '```',
  ].join('\n')
}
