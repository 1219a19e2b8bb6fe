import { describe, expect, test } from 'vitest'
import type { Card } from '../../src/card/card.ts'
import type { Bond, Structure } from '../../src/card/structure.ts'
import { foldCard } from '../../src/fold/prove.ts'
import { proveCard } from '../../src/fold/prove-card.ts'
import { stickingOut } from '../../src/fold/sticking-out.ts'
import { usualGrid } from '../../src/length/grid.ts'
import { mm, plus, type Unit, zero } from '../../src/length/length.ts'
import { cardOf } from '../card/block.ts'
import { card, rectangle, sheet, strip, stuck } from './build.ts'

const findingsOf = (text: string, unit: Unit = 'in') =>
  proveCard(
    { name: 'card', text, place: { line: 1, column: 1, offset: 0 } },
    { unit, grid: usualGrid[unit] },
  ).findings.map(({ rule, severity, message, suggestion, place }) => ({
    rule,
    severity,
    message,
    suggestion,
    line: place?.line,
  }))

describe('a strip on a panel that is wider than the card', () => {
  const tag = (width: string) =>
    `fold: side\nclosed: 5 x 7 in\nspans:\n  tag: {from: back, to: back, width: ${width}, height: 1 in}`

  test('is told with the piece, the edge, the amount and the smallest change, which cures it', () => {
    expect(findingsOf(tag('5 1/2 in'))).toEqual([
      {
        rule: 'sticks-out',
        severity: 'error',
        message: 'Shut, `tag` sticks out of the card beyond the right edge by 1/2 in',
        suggestion: 'Make it 1/2 in narrower',
        line: 4,
      },
    ])
    expect(findingsOf(tag('5 in'))).toEqual([])
  })

  test('letters on what sticks out stick out too', () => {
    const lettered = (width: string) =>
      `${tag(width)}\nlettering:\n  name: {on: tag, letters: AHOY, widths: 1 in, margin: 0 in}`
    // By hand: three gaps of 5/8 in are 1/8 in short of the 2 in that four letters leave, so the last ends at 5 15/16 in.
    const found = findingsOf(lettered('6 in'))
    expect(found.map(({ line, message }) => [line, message])).toEqual([
      [4, 'Shut, `tag` sticks out of the card beyond the right edge by 1 in'],
      [6, 'Shut, a letter of `name` sticks out of the card beyond the right edge by 15/16 in'],
    ])
    expect(findingsOf(lettered('5 in'))).toEqual([])
  })
})

/** A card like one from a block, with a structure of its own. */
const cardWith = (structure: Structure, layers: Card['layers'] = []): Card => ({
  ...cardOf('fold: side\nclosed: 50 x 40 mm', { unit: 'mm' }),
  structure,
  layers,
})

const told = (it: Card) => {
  const { closed, findings } = foldCard(it.structure)
  expect(findings).toEqual([])
  if (!closed) throw new Error('does not shut')
  return stickingOut(it, closed).map(({ message, suggestion }) => [message, suggestion])
}

const spread = strip({
  panels: [
    ['front', mm(50)],
    ['back', mm(50)],
  ],
  folds: 'V',
  across: mm(40),
})

/** Turned over, so that x is where its right edge lies. Only there can it reach past the spine. */
const outside = { side: 'back', over: true } as const

/** A sheet of 20 × 10 mm on one of the two panels. */
const tagged = (bond: Partial<Bond>, x: number, y: number, size = { width: 20, height: 10 }): Structure => {
  const tag = sheet('tag', mm(size.width), mm(size.height))
  return card({
    parts: [spread, { ...tag, pieces: tag.pieces.map((piece) => ({ ...piece, kind: 'span' as const })) }],
    bonds: [stuck('tag', 'back', mm(x), mm(y), bond)],
    plate: 'back',
  })
}

describe('what is stuck on, wherever and however', () => {
  test.each([
    // The back is 50 to 100; seen from the front it lies at 0 to 50.
    [
      'right',
      tagged({}, 83, 0),
      'the right edge by 3 mm',
      'Make it 3 mm narrower, or move it 3 mm to the left',
    ],
    [
      'left',
      tagged(outside, 66, 0),
      'the left edge by 4 mm',
      'Make it 4 mm narrower, or move it 4 mm to the right',
    ],
    ['top', tagged({}, 60, 35), 'the upper edge by 5 mm', 'Make it 5 mm shorter, or move it 5 mm down'],
    ['bottom', tagged({}, 60, -2), 'the lower edge by 2 mm', 'Make it 2 mm shorter, or move it 2 mm up'],
    // Turned by a quarter its width is up and down: from 35 to 55.
    [
      'turned',
      tagged({ turn: 90 }, 70, 35),
      'the upper edge by 15 mm',
      'Make it 15 mm narrower, or move it 15 mm down',
    ],
    // Too wide to be moved: 60 mm on 50.
    [
      'wide',
      tagged(outside, 108, 0, { width: 60, height: 10 }),
      'the left edge by 2 mm and the right edge by 8 mm',
      'Make it 10 mm narrower',
    ],
    // On the front the right is the left of the shut card: 0 to 20 lies at 30 to 50, -3 to 17 at 33 to 53.
    [
      'front',
      tagged({ onto: 'front' }, -3, 0),
      'the right edge by 3 mm',
      'Make it 3 mm narrower, or move it 3 mm to the left',
    ],
  ])('%s', (_, structure, where, cure) => {
    expect(told(cardWith(structure))).toEqual([
      [`Shut, \`tag\` sticks out of the card beyond ${where}`, cure],
    ])
  })

  test('the moves that are said cure it', () => {
    for (const [x, y] of [
      [80, 0],
      [60, 30],
      [60, 0],
    ] as const)
      expect(told(cardWith(tagged({}, x, y)))).toEqual([])
    expect(told(cardWith(tagged(outside, 70, 0)))).toEqual([])
  })

  test('amounts off the ruler are cured to the next mark', () => {
    const structure = tagged({}, 83.25, 0)
    expect(told(cardWith(structure))).toEqual([
      [
        'Shut, `tag` sticks out of the card beyond the right edge by 3.25 mm',
        'Make it 4 mm narrower, or move it 4 mm to the left',
      ],
    ])
  })

  test('both ways at once are two findings', () => {
    expect(told(cardWith(tagged({}, 83, 35))).map(([, cure]) => cure)).toEqual([
      'Make it 3 mm narrower, or move it 3 mm to the left',
      'Make it 5 mm shorter, or move it 5 mm down',
    ])
  })

  test('a layer is told which of its borders to widen, as it is seen itself', () => {
    const layered = (left: number, side: 'face' | 'back') => {
      const base = side === 'face' ? tagged({}, 50 + left, 0) : tagged(outside, 100 - left, 0)
      const structure: Structure = {
        ...base,
        pieces: base.pieces.map((piece) => (piece.name === 'tag' ? { ...piece, kind: 'layer' } : piece)),
      }
      const border = { left: mm(left), right: mm(30 - left), top: mm(30), bottom: zero }
      return cardWith(structure, [{ name: 'tag', on: ['back'], side, border, plates: ['tag'] }])
    }
    const right = 'Shut, `tag` sticks out of the card beyond the right edge by 2 mm'
    expect(told(layered(32, 'face'))).toEqual([[right, 'Leave a border of at least 0 mm at its right edge']])
    // On the outside its left is the right of the shut card, as that is looked at from the other side.
    expect(told(layered(-2, 'back'))).toEqual([[right, 'Leave a border of at least 0 mm at its left edge']])
    expect([told(layered(30, 'face')), told(layered(0, 'back'))]).toEqual([[], []])
  })

  test('a pad beyond its plate', () => {
    const padded = (left: number): Structure => ({
      ...card({ parts: [spread], plate: 'back' }),
      pads: [
        {
          name: 'dots',
          onto: 'back',
          side: 'face',
          outline: rectangle(mm(left), mm(0), mm(5), mm(5)),
          height: plus(mm(1), mm(1)),
        },
      ],
    })
    expect(told(cardWith(padded(97)))).toEqual([
      [
        'Shut, a letter of `dots` sticks out of the card beyond the right edge by 2 mm',
        'Use letters 2 mm narrower, or what they are on',
      ],
    ])
    expect(told(cardWith(padded(95)))).toEqual([])
  })
})
