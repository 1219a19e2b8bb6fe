import { expect, test } from 'vitest'
import { proveCard } from '../src/fold/prove-card.ts'
import { usualGrid } from '../src/length/grid.ts'

/** Cards that must be refused: why, what the teacher is told, and the block as a teacher might write it. */
const refused: readonly (readonly [why: string, rule: string, told: string, block: string])[] = [
  [
    'legs that are longer than the card has room for',
    'impossible-size',
    'A leg of 4 in leaves no floor on a card 7 in wide. Make the leg at most 3 1/4 in, or the card wider',
    `fold: bridge
closed: 7 x 5 in
leg: 4 in`,
  ],
  [
    'a ring of panels that does not lie flat',
    'folds-flat',
    'The ring of `floor`, `right`, `lid`, `left` and `tab` does not close when the card is shut: it misses by 1/2 in. Make `left` 1/2 in shorter',
    `fold: free
closed: 4 x 4 in
panels: {floor: 3 in, right: 1 in, lid: 3 in, left: 1 1/2 in, tab: 1/2 in}
creases: [valley, valley, valley, valley]
glue:
  - {panel: tab, onto: floor, edge: left}`,
  ],
  [
    'a panel that would have to pass through a fold',
    'layers-cross',
    'When the card is shut, `c` would have to pass through the crease between `a` and `b`. Make `c` shorter so that it ends before that crease, or turn one of the two creases the other way',
    `fold: free
closed: 3 x 4 in
panels: {a: 3 in, b: 1 in, c: 2 in}
creases: [valley, valley]`,
  ],
  [
    'a strip that is stuck over the spine',
    'stuck-across-a-crease',
    '`band` is stuck on both `front` and `back`, so the crease between them cannot fold. Cut `band` in two at the crease, or stick it on one side of the crease only',
    `fold: side
closed: 5 x 7 in
spans:
  band: {from: front, to: back, width: 10 in, height: 2 in}`,
  ],
  [
    'a card that shuts to another size than the lesson says',
    'closed-size',
    'Shut, this card is 4 1/4 × 6 in, but the lesson says 4 × 6 in. Write `closed: 4 1/4 x 6 in`, or change the panels',
    `fold: free
closed: 4 x 6 in
panels: {front: 4 1/4 in, back: 4 in}
creases: [valley]`,
  ],
  [
    'a bridge that is led by a strip of the wrong length',
    'folds-flat',
    'The ring of `left tab`, `left leg`, `floor` and `right leg` does not close when the card is shut: it misses by 3/4 in. Make `floor` 3/4 in longer',
    `fold: bridge
closed: 7 x 5 in
leg: 3/4 in
spans:
  rail: {from: left tab, to: right leg, width: 7 in, height: 1 in}`,
  ],
  [
    'letters that do not fit their strip',
    'letters-too-wide',
    '13 letters take 9 3/4 in, but there are 6 1/2 in between the margins. Use letters at most 1/2 in wide, or fewer of them',
    `fold: bridge
closed: 7 x 5 in
spans:
  wall: {height: 1 in}
lettering:
  name: {on: wall, letters: HARBOURMASTER, widths: 3/4 in, margin: 1/4 in}`,
  ],
  [
    'a pop-up that shows when the card is shut',
    'impossible-size',
    'Shut, the wings reach 5 15/16 in from the fold, beyond panels of 5 in. Make the height at most 3 15/16 in',
    `fold: v-fold
closed: 5 x 7 in
height: 6 in`,
  ],
  [
    'a cascade that does not fit its card',
    'impossible-size',
    '4 panels of 1 1/4 in at steps of 2 in, with a bar of 2 3/8 in and 1/2 in to pull at, do not make a cascade on a card 4 in wide and 4 in high: it would be 7 3/4 in high. Make the step at most 3/4 in, or the card at least 3 3/16 in wide and 8 9/16 in high, or take fewer panels',
    `fold: waterfall
closed: 4 x 4 in
step: 2 in`,
  ],
  [
    'a card that turns inside out and is not square',
    'impossible-size',
    'An endless card is square, but this one is 6 in wide and 5 in high. Make it 5 in wide and high',
    `fold: endless
closed: 6 x 5 in`,
  ],
  [
    'an envelope round a box',
    'envelope-depth',
    'Shut, this card is 2 1/16 in deep and only 2 in across, so an envelope cannot be folded round it. Take `envelope` out of the card block, and send the card in a box',
    `fold: match box
closed: 2 x 3 in
depth: 2 in
envelope: {make: diagonal}`,
  ],
]

test.each(refused)('%s: %s', (_, rule, told, text) => {
  const { findings } = proveCard(
    { name: 'card', text, place: { line: 1, column: 1, offset: 0 } },
    { unit: 'in', grid: usualGrid.in },
  )
  expect(findings.map((f) => [f.severity, f.rule, `${f.message}. ${f.suggestion}`])).toEqual([
    ['error', rule, told],
  ])
})
