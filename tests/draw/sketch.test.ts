import { describe, expect, test } from 'vitest'
import { hingesOf } from '../../src/card/scores.ts'
import { sketchPieces } from '../../src/draw/sketch.ts'
import { inches } from '../../src/length/length.ts'
import { blocks, cardOf, pleated } from './cards.ts'

const small = { columns: 36, rows: 6 }
const rowsOf = (block: string, room = small): readonly string[] => {
  const { card } = cardOf(block)
  return sketchPieces(card, card.structure.pieces.slice(0, 1), room).rows
}

// 10 × 7 in: seven inches are five rows of two columns each, so an inch is 10/7 columns: 14 wide, the crease at 7.
test('a side fold is a sheet with a valley in its middle', () => {
  expect(rowsOf(blocks.side ?? '')).toEqual([
    '+-------------+',
    '|      :      |',
    '|      :      |',
    '|      :      |',
    '|      :      |',
    '+-------------+',
  ])
})

// 8 × 4 in in rows of 4/5 in and columns of 2/5 in: creases at 3, 4 and 5 in are 7.5, 10 and 12.5 columns from the left
// edge, the slit from 3 to 5 in is 2.5 rows down.
test('a slit is a cut within, and creases end at it', () => {
  expect(
    rowsOf(`fold: free
closed: 6 x 4 in
strips:
  upper:
    panels: {front: 3 in, wall: 1 in, back: 4 in}
    creases: [mountain, valley]
  lower:
    height: 2 in
    panels: {front: 4 in, step: 1 in, back: 3 in}
    creases: [mountain, valley]
stand: {panel: back, rests: upright}`),
  ).toEqual([
    '+-------------------+',
    '|       ! :         |',
    '|       ! :         |',
    '|       +----+      |',
    '|         !  :      |',
    '+-------------------+',
  ])
})

// 5 × 10 in: floor, prop and foot upwards, creases at 5 and 7 1/2 in.
test('level creases are rows of the same signs', () => {
  expect(rowsOf(blocks.easel ?? '')).toEqual(['+----+', '|!!!!|', '|    |', '|::::|', '|    |', '+----+'])
})

test('windows are edges within', () => {
  const rows = rowsOf('fold: side\nclosed: 5 x 7 in\napertures: {pane: {on: front, size: 3 x 3 in}}', {
    columns: 60,
    rows: 15,
  })
  expect(rows.filter((row) => /^\| +\+-+\+ +: +\|$/.test(row))).toHaveLength(2)
})

describe('every crease is there, in its order', () => {
  const strips = Object.entries(blocks).flatMap(([name, block]) => {
    const { card } = cardOf(block)
    const [base] = card.structure.pieces
    const scores = base ? hingesOf(card.structure, base.name) : []
    const across = scores.every(
      ({ line }) =>
        line.from.x.equals(line.to.x) && line.to.y.sub(line.from.y).equals(base?.size.height ?? 0),
    )
    return base && across && scores.length > 0 ? [{ name, card, base, scores }] : []
  })
  test('of several folds', () => expect(strips.length).toBeGreaterThan(5))

  test.each(strips)('$name', ({ card, base, scores }) => {
    const row = sketchPieces(card, [base], small).rows[1] ?? ''
    const marks = scores
      .toSorted((a, b) => a.line.from.x.compare(b.line.from.x))
      .map(({ fold }) => (fold === 'valley' ? ':' : '!'))
    expect(row.replaceAll(' ', '')).toBe(`|${marks.join('')}|`)
  })
})

test('panels are in proportion where there is room, and never less than a column wide', () => {
  const { card } = pleated(
    [1, 8, 4, 1 / 64].map((x) => inches(x * 64, 64)),
    'width',
    inches(4),
  )
  const [, row = ''] = sketchPieces(card, card.structure.pieces.slice(0, 1), { columns: 60, rows: 6 }).rows
  expect(
    row
      .split(/[|:!]/)
      .slice(1, -1)
      .map((panel) => panel.length + 1),
  ).toEqual([3, 20, 10, 2])
})

test('several pieces stand on one line with their names; what finds no room is told', () => {
  const { card } = cardOf(blocks.easel ?? '')
  const pieces = card.structure.pieces.slice(0, 2)
  const whole = sketchPieces(card, pieces, small)
  expect(whole.left).toEqual([])
  expect(whole.rows.at(-1)).toMatch(/^base +front$/)
  expect(whole.rows.at(-2)).toMatch(/^\+-+\+ {2}\+-+\+$/)
  const narrow = sketchPieces(card, pieces, { columns: 6, rows: 6 })
  expect(narrow.left.map(({ name }) => name)).toEqual(['front'])
  expect(narrow.rows.at(-1)).toBe('base')
})
