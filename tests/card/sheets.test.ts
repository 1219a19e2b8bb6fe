import { expect, test } from 'vitest'
import { rectangle } from '../../src/card/strip.ts'
import type { Structure } from '../../src/card/structure.ts'
import { mm } from '../../src/length/length.ts'
import { cardOf } from './block.ts'
import { troublesOfSheets } from './sheets.ts'

const { structure } = cardOf('fold: side\nclosed: 50 x 40 mm', { unit: 'mm' })
const at = (x: number, y: number) => ({ x: mm(x), y: mm(y) })
const box = (x: number, y: number, w: number, h: number) =>
  rectangle({ width: mm(w), height: mm(h) }, at(x, y))

const changed = (more: Partial<Structure>) => troublesOfSheets({ ...structure, ...more })
const withFront = (outline: ReturnType<typeof box>, holes: ReturnType<typeof box>[] = []) =>
  changed({ plates: structure.plates.map((p) => (p.name === 'front' ? { ...p, outline, holes } : p)) })

test('a folded sheet is whole', () => {
  expect(troublesOfSheets(structure)).toEqual([])
})

test('a panel that is too short leaves a gap, and an edge that nothing makes', () => {
  expect(withFront(box(1, 0, 49, 40))).toEqual([
    'front has an edge that is neither cut nor scored',
    'the panels of base do not add up to it',
  ])
})

test('one that is too long lies on the next or sticks out', () => {
  expect(withFront(box(0, 0, 51, 40))).toContain('front lies on back')
  expect(withFront(box(-1, 0, 51, 40))).toContain('front sticks out of base')
})

test('a window has to be cut, and to be in its panel', () => {
  expect(withFront(box(0, 0, 50, 40), [box(10, 10, 5, 5)])).toEqual(['a window of front is not cut'])
  expect(withFront(box(0, 0, 50, 40), [box(48, 10, 5, 5)])).toContain('a window of front is not in it')
})

test('a score that is beside the edge it should be on', () => {
  const [hinge] = structure.hinges
  const hinges = hinge ? [{ ...hinge, line: { from: at(49, 0), to: { x: mm(49), y: mm(40) } } }] : []
  expect(changed({ hinges })).toContain('the score of front and back is not on an edge of front')
})

test('a piece that its scores do not hold together, and one of which there are more than are cut', () => {
  expect(changed({ hinges: [] })).toContain('base is cut 1 times but hangs together in 2')
  const pieces = structure.pieces.map((piece) => ({ ...piece, count: 2 }))
  expect(changed({ pieces })).toEqual(['base is cut 2 times but hangs together in 1'])
})

test('a slit that is not listed among the cuts', () => {
  const slit = { from: at(0, 20), to: at(50, 20) }
  const [front, back] = structure.plates
  if (!front || !back) throw new Error('two panels')
  const upper = { ...front, name: 'flap', outline: box(0, 20, 50, 20) }
  const plates = [{ ...front, outline: box(0, 0, 50, 20) }, upper, back]
  const line = (y0: number, y1: number) => ({ from: at(50, y0), to: at(50, y1) })
  const hinges = [
    { between: ['front', 'back'], line: line(0, 20), fold: 'valley' },
    { between: ['flap', 'back'], line: line(20, 40), fold: 'valley' },
  ] as const
  expect(changed({ plates, hinges })).toContain('front has an edge that is neither cut nor scored')
  const pieces = structure.pieces.map((piece) => ({ ...piece, cuts: [slit] }))
  expect(changed({ plates, hinges, pieces })).toEqual([])
})
