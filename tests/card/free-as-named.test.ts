import { describe, expect, test } from 'vitest'
import { type Score, scoresOfPiece } from '../../src/card/scores.ts'
import { foldCard } from '../../src/fold/prove.ts'
import type { Length } from '../../src/length/length.ts'
import { cardOf } from './block.ts'

const text = (x: Length): string => x.toFraction()
const scoreText = ({ at, along, from, to, fold }: Score) =>
  `${fold} ${text(at)} along the ${along}, ${text(from)} to ${text(to)}`
const mm = (x: number): number => Math.round(x * 1e6) / 1e6

/** What a maker of the card gets, whichever way it was written down. */
function made(block: string, options: Parameters<typeof cardOf>[1]) {
  const { structure } = cardOf(block, options)
  const { closed, standing, freedom, findings } = foldCard(structure)
  return {
    findings,
    freedom,
    pieces: structure.pieces.map(({ name, size }) => `${name} ${text(size.width)} × ${text(size.height)}`),
    scores: structure.pieces.map(({ name }) => scoresOfPiece(structure, name).map(scoreText)),
    closed: closed && [text(closed.size.width), text(closed.size.height), text(closed.thickness)],
    order: closed?.order,
    standing: standing && [standing.width, standing.height, standing.depth].map(mm),
  }
}

/** Folds of the catalogue, and the same card as strips, sheets and bonds. */
const pairs: readonly (readonly [name: string, closed: string, named: string, free: string])[] = [
  [
    'side',
    '5 x 7 in',
    '',
    `panels: {front: closed.width, back: closed.width}
creases: [valley]
stand: {panel: back, turn: 66, creases: [{between: [front, back], bent: 130}]}`,
  ],
  [
    'gate',
    '5 x 7 in',
    'part: 1/4 in',
    `panels: {left door: (closed.width - 1/4 in) / 2, back: closed.width, right door: left door.width}
creases: [valley, valley]
stand:
  panel: back
  creases: [{between: [left door, back], bent: 75}, {between: [back, right door], bent: 75}]`,
  ],
  [
    'z',
    '5 x 7 in',
    'tongue: 2 in',
    `panels: {tongue: 2 in, middle: tongue.width, back: closed.width}
creases: [mountain, valley]
stand:
  panel: back
  creases: [{between: [middle, back], bent: 110}, {between: [tongue, middle], bent: 110}]`,
  ],
  [
    'letter',
    '4 x 6 in',
    'creep: 1/8 in',
    `panels: {cover: closed.width, back: closed.width, tuck: closed.width - 1/8 in}
creases: [valley, valley]
stand:
  panel: back
  creases: [{between: [back, tuck], bent: 80}, {between: [cover, back], bent: 60}]`,
  ],
  [
    'bridge',
    '7 x 5 in',
    'leg: 3/4 in\nspans: {sea: {height: 2 in}}',
    `panels:
  left tab: 3/4 in
  left leg: left tab.width
  floor: closed.width - left tab.width * 2
  right leg: left leg.width
  right tab: left tab.width
creases: [mountain, valley, valley, mountain]
stand: {panel: floor, creases: [{between: [left leg, floor], bent: 90}]}
spans: {sea: {height: 2 in, from: left tab, to: right tab, width: floor.width + left tab.width * 2}}`,
  ],
  [
    'easel',
    '5 x 6 in',
    'stop: 50 mm',
    `along: height
panels: {floor: closed.height, prop: floor.height / 2, foot: floor.height - prop.height}
creases: [valley, mountain]
sheets:
  front: {width: closed.width, height: closed.height}
bonds:
  - {panel: front, onto: foot, bottom: prop.height - floor.height}
stand:
  panel: floor
  until: {panel: front, edge: bottom, onto: floor, top: 50 mm}`,
  ],
]

describe.each(pairs)('%s written as a free fold', (name, closed, named, free) => {
  const wishes = [{ unit: 'in' }, { unit: 'mm' }, { unit: 'mm', closed: '128 x 128 mm' }] as const
  test.each(wishes)('is the same card: %o', (wish) => {
    const one = made(`fold: ${name}\nclosed: ${closed}\n${named}`, wish)
    expect(one.findings).toEqual([])
    expect(made(`fold: free\nclosed: ${closed}\n${free}`, wish)).toEqual(one)
  })
})

test('a floating layer of five sheets moves as the one of the catalogue', () => {
  const free = `fold: free
closed: 5 x 7 in
lengths: {stilt: 5/8 in, tab: 5/16 in, border: 1/4 in}
panels: {front: 5 in, back: 5 in}
creases: [valley]
sheets:
  raised panel: {width: closed.width - (stilt + border) * 2, height: closed.height - border * 2}
  left: {height: 6 in, panels: {left foot: tab, left stilt: stilt, left head: tab}, creases: [valley, mountain]}
  right: {height: 6 in, panels: {right foot: tab, right stilt: stilt, right head: tab}, creases: [valley, mountain]}
  strut:
    height: raised panel.height - 4 1/4 in
    panels: {link tab: tab, link: stilt + border + tab}
    creases: [mountain]
bonds:
  - {panel: left foot, onto: back, left: stilt + border, bottom: border * 2}
  - {panel: right foot, onto: back, left: stilt + border + raised panel.width - tab * 2, bottom: border * 2}
  - {panel: left head, onto: raised panel, side: outside, left: tab, bottom: border}
  - {panel: right head, onto: raised panel, side: outside, right: 0, bottom: border}
  - {panel: link, onto: raised panel, side: outside, left: -stilt - border, bottom: 2 1/8 in}
  - {panel: link tab, onto: front, over: yes, right: stilt - tab, bottom: border + 2 1/8 in}
stand: {panel: back, turn: -75, creases: [{between: [front, back], bent: 90}]}`
  // Sheets that do not lie on each other may be told in any order.
  const parts = ({ closed, standing, freedom, findings }: ReturnType<typeof made>) => ({
    closed,
    standing,
    freedom,
    findings,
  })
  const named = made('fold: floating layer\nclosed: 5 x 7 in\nstilt: 5/8 in', { unit: 'in' })
  expect([named.freedom, named.findings]).toEqual([1, []])
  expect(parts(made(free, { unit: 'in' }))).toEqual(parts(named))
})
