import { describe, expect, test } from 'vitest'
import type { Card } from '../../src/card/card.ts'
import { checkOffPanel } from '../../src/card/off-panel.ts'
import type { Bond, Hinge, Plate } from '../../src/card/structure.ts'
import type { Finding } from '../../src/length/finding.ts'
import { usualGrid } from '../../src/length/grid.ts'
import { mm, zero } from '../../src/length/length.ts'
import { wordingOf } from '../../src/wording/wording.ts'
import { cardOf } from './block.ts'

/** A line from one point to another, in mm. */
type Line = readonly [x0: number, y0: number, x1: number, y1: number]

interface Panel {
  readonly outline: readonly (readonly [x: number, y: number])[]
  readonly valleys: readonly Line[]
}

/** A layer in the rectangle 0, 0, 60, 40 round a panel, with these borders. Seen from outside its valleys are mountains. */
function told(
  { outline, valleys }: Panel,
  [left, right, top, bottom]: readonly [number, number, number, number],
  isOutside = false,
): (string | undefined)[] {
  const card = cardOf('fold: side\nclosed: 60 x 40 mm', { unit: 'mm' })
  const size = { width: mm(60 - left - right), height: mm(40 - top - bottom) }
  const stock = card.structure.pieces[0]?.stock ?? ({} as never)
  const layer = { name: 'mat', kind: 'layer', stock, count: 1, size, cuts: [] } as const
  const bond: Bond = {
    plate: 'mat',
    onto: 'wall',
    side: isOutside ? 'back' : 'face',
    over: isOutside,
    turn: 0,
    at: { x: mm(isOutside ? 60 - left : left), y: mm(bottom) },
    height: zero,
  }
  const border = { left: mm(left), right: mm(right), top: mm(top), bottom: mm(bottom) }
  const hinges = valleys.map(
    ([x0, y0, x1, y1]): Hinge => ({
      between: ['wall', 'step'],
      line: { from: { x: mm(x0), y: mm(y0) }, to: { x: mm(x1), y: mm(y1) } },
      fold: isOutside ? 'mountain' : 'valley',
    }),
  )
  const wall: Plate = {
    name: 'wall',
    piece: 'base',
    outline: outline.map(([x, y]) => ({ x: mm(x), y: mm(y) })),
    holes: [],
  }
  const it: Card = {
    ...card,
    structure: { ...card.structure, pieces: [layer], plates: [wall], hinges, bonds: [bond] },
    layers: [{ name: 'mat', on: ['wall'], side: bond.side, border, plates: ['mat'] }],
  }
  const findings: Finding[] = []
  const places = new Map([['mat', { line: 7, column: 3 }]])
  const wording = wordingOf('en', 'mm')
  checkOffPanel({ findings, places, unit: 'mm', grid: usualGrid.mm, wording, scope: {} as never }, it)
  for (const { rule, severity, message, place } of findings)
    expect([rule, severity, message, place]).toEqual([
      'sticks-out',
      'error',
      `\`mat\` sticks out of \`wall\` over the ${isOutside ? 'mountain' : 'valley'} crease of \`step\`, which closes over it`,
      { line: 7, column: 3 },
    ])
  return findings.map(({ suggestion }) => suggestion)
}

/** The right half of the panel is 20 mm lower. */
const step: Panel = {
  outline: [
    [0, 0],
    [60, 0],
    [60, 20],
    [30, 20],
    [30, 40],
    [0, 40],
  ],
  valleys: [[30, 20, 60, 20]],
}
/** A doorway from 20 to 40, 15 mm high, with its crease at the top. */
const door: Panel = {
  outline: [
    [0, 0],
    [20, 0],
    [20, 15],
    [40, 15],
    [40, 0],
    [60, 0],
    [60, 40],
    [0, 40],
  ],
  valleys: [[20, 15, 40, 15]],
}
/** The upper right half is another panel. */
const triangle: Panel = {
  outline: [
    [0, 0],
    [60, 0],
    [0, 40],
  ],
  valleys: [[0, 40, 60, 0]],
}

describe('a layer over a crease that closes over it', () => {
  test('is told which border has to grow so that most of it is left, and that cures it', () => {
    // 50 × 36 mm: without 18 mm at the top 900 mm² are left, without 28 mm at the right 792 mm².
    expect(told(step, [8, 2, 2, 2])).toEqual(['Leave a border of at least 20 mm at its top edge'])
    expect(told(step, [2, 2, 20, 2])).toEqual([])
    expect(told(step, [2, 2, 19, 2])).toHaveLength(1)
    expect(told(door, [0, 0, 0, 0])).toEqual(['Leave a border of at least 15 mm at its bottom edge'])
    expect(told(door, [0, 0, 0, 15])).toEqual([])
    // Only 3 mm lap over the door from the right.
    expect(told(door, [37, 0, 0, 0])).toEqual(['Leave a border of at least 40 mm at its left edge'])
    expect(told(door, [40, 0, 0, 0])).toEqual([])
  })

  test('on the outside its left is the right of the panel', () => {
    expect(told(step, [25, 0, 0, 0], true)).toEqual(['Leave a border of at least 30 mm at its left edge'])
    expect(told(step, [30, 0, 0, 0], true)).toEqual([])
    expect(told(step, [0, 30, 0, 0], true)).toHaveLength(1)
  })

  test('a slanting crease', () => {
    // Its upper right corner is inside when x/60 + y/40 ≤ 1: of 30 × 20 mm with its corner at (40, 20), 10 mm less at the
    // right leave 400 mm², 7 mm less at the top 390 mm².
    expect(told(triangle, [10, 20, 20, 0])).toEqual(['Leave a border of at least 30 mm at its right edge'])
    expect(told(triangle, [10, 30, 20, 0])).toEqual([])
    expect(told(triangle, [10, 20, 27, 0])).toEqual([])
    expect(told(triangle, [10, 29, 20, 0])).toHaveLength(1)
    // A layer all over it has to leave half of itself at a corner.
    expect(told(triangle, [0, 0, 0, 0])).toEqual([
      'Leave a border of at least 30 mm at its right edge and 20 mm at its top edge',
    ])
    expect(told(triangle, [0, 30, 20, 0])).toEqual([])
  })

  test('where one border alone does not help all grow, and where that does not either it goes elsewhere', () => {
    const rectangle: Panel['outline'] = [
      [0, 0],
      [60, 0],
      [60, 40],
      [0, 40],
    ]
    // Only the column from 20 to 30 is of the panel: two borders would have to grow, on opposite sides.
    const column: Panel = {
      outline: [
        [20, 0],
        [30, 0],
        [30, 40],
        [20, 40],
      ],
      valleys: [
        [20, 0, 20, 40],
        [30, 0, 30, 40],
      ],
    }
    expect(told(column, [0, 0, 0, 0])).toEqual(['Put it on another panel'])
    const corners: Panel = {
      outline: rectangle,
      valleys: [
        [0, 5, 5, 0],
        [55, 0, 60, 5],
        [0, 35, 5, 40],
        [55, 40, 60, 35],
      ],
    }
    // With a border b all round the corner (b, b) is inside when 2·b ≥ 5.
    expect(told(corners, [0, 0, 0, 0])).toEqual(['Make its border 3 mm wider all round'])
    expect(told(corners, [3, 3, 3, 3])).toEqual([])
  })
})
