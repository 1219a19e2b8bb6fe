import { describe, expect, test } from 'vitest'
import { explained, formulas, lessonOf } from './explained.ts'

/*
 * The tables are derived by hand from how each fold is described, no source: panels in their order, W wide and H high
 * when shut, scores where one panel meets the next.
 */

/** A strip to hold the tabs of a bridge together. */
const span = '\nspans:\n  strip: {height: 1 in}'

describe('what a fold is described by comes back as formulas', () => {
  test('a bridge: tab · leg · floor · leg · tab, F = W - leg - max(tab, 2·tab - leg)', () => {
    // A short tab: the leg beside the floor decides.
    expect(formulas(`fold: bridge\nclosed: 7 x 5 in\nleg: 1 in\ntab: 3/4 in${span}`)).toMatchObject({
      'floor.width': 'closed.width - leg - tab',
      'left leg.width': 'leg',
      'base.width': 'closed.width + leg + tab',
      'base.scores.1': 'tab',
      'base.scores.2': 'leg + tab',
      'base.scores.3': 'closed.width',
      'base.scores.4': 'closed.width + leg',
    })
    // A long one: two tabs side by side decide, and the leg cancels out.
    expect(formulas(`fold: bridge\nclosed: 7 x 5 in\nleg: 3/4 in\ntab: 1 in${span}`)).toMatchObject({
      'floor.width': 'closed.width - 2 * tab',
      'base.width': 'closed.width + 2 * leg',
    })
    // A tab as long as the leg follows it: at the kink between the two only what is written out can be asked.
    expect(formulas(`fold: bridge\nclosed: 7 x 5 in\nleg: 3/4 in${span}`)).toMatchObject({
      'floor.width': 'closed.width - 2 * leg',
    })
  })

  test('tabs that happen to be as long as the legs have no formula, but what they depend on', () => {
    const [card] = explained(lessonOf(`fold: bridge\nclosed: 7 x 5 in\nleg: 1 in\ntab: 1 in${span}`), 'in')
    const floor = card?.numbers.find(({ name }) => name === 'floor.width')
    expect(floor?.source).toEqual({ kind: 'lengths', names: ['closed.width', 'leg', 'tab'] })
  })

  test('a Z: tongue · middle · back', () => {
    expect(formulas('fold: z\nclosed: 5 x 7 in')).toMatchObject({
      'middle.width': 'tongue',
      'base.width': 'closed.width + 2 * tongue',
      'base.height': 'closed.height',
      'base.scores.2': '2 * tongue',
    })
    // The spine at the top: the same sheet turned, its back at the bottom.
    expect(formulas('fold: z\nclosed: 5 x 7 in\nspine: top')).toMatchObject({
      'base.width': 'closed.width',
      'base.height': 'closed.height + 2 * tongue',
      'base.scores.1': 'closed.height',
      'base.scores.2': 'closed.height + tongue',
    })
  })

  test('a gate: D = (W - part)/2', () => {
    expect(formulas('fold: gate\nclosed: 5 x 7 in')).toMatchObject({
      'left door.width': '(closed.width - part) / 2',
      'base.width': '2 * closed.width - part',
      'base.scores.1': '(closed.width - part) / 2',
      'base.scores.2': '(3 * closed.width - part) / 2',
    })
  })

  test('an easel: the prop is half of the height', () => {
    expect(formulas('fold: easel\nclosed: 5 x 7 in')).toMatchObject({
      'prop.height': 'closed.height / 2',
      'floor.height': 'closed.height',
      'base.height': '2 * closed.height',
    })
  })

  test('a letter: cover W · back W · tuck W - creep', () => {
    expect(formulas('fold: letter\nclosed: 4 x 6 in')).toMatchObject({
      'tuck.width': 'closed.width - creep',
      'base.width': '3 * closed.width - creep',
      'base.scores.2': '2 * closed.width',
    })
  })

  test('an accordion of five', () => {
    expect(formulas('fold: accordion\nclosed: 4 x 6 in\npanels: 5')).toMatchObject({
      'base.width': '5 * closed.width',
      'base.scores.4': '4 * closed.width',
    })
  })

  test('layers, lettering and a side seam envelope', () => {
    const block = `fold: side
closed: 5 x 7 in
layers:
  mat: {on: front, border: {sides: 1/8 in, ends: 1/4 in}}
pieces:
  strip: {size: closed.width - 1 in x 3/4 in}
lettering:
  name: {on: strip, letters: GULL, widths: 1/2 in, margin: 1/4 in}
envelope: {make: side seam, flap: 3/4 in}`
    expect(formulas(block)).toMatchObject({
      'mat.width': 'closed.width - mat.border.left - mat.border.right',
      'mat.height': 'closed.height - mat.border.top - mat.border.bottom',
      // (strip - 4 letters - 2 margins) / 3
      'name.gap': '(strip.width - 4 * name.width - 2 * name.margin) / 3',
      // sheet (w + 2·f) × (2·h + f), w and h the card with its clearance and its thickness
      'envelope.width': 'closed.width + card.thickness + envelope.clearance + 2 * envelope.flap',
      'envelope.height': '2 * closed.height + 2 * card.thickness + 2 * envelope.clearance + envelope.flap',
    })
  })

  test('a diagonal envelope takes a root, so it has no formula', () => {
    const [card] = explained(lessonOf('fold: side\nclosed: 5 x 7 in\nenvelope: diagonal'), 'in')
    const sheet = card?.numbers.find(({ name }) => name === 'envelope.width')
    expect(sheet?.source).toEqual({
      kind: 'lengths',
      names: ['closed.width', 'closed.height', 'card.thickness', 'envelope.clearance', 'envelope.seam'],
    })
    const score = card?.numbers.find(({ name }) => name === 'envelope.score')
    expect(score?.rounding).toBe('up')
  })
})

test('where a length is written, and what is usual', () => {
  const [card] = explained(lessonOf(`fold: bridge\nclosed: 7 x 5 in\nleg: closed.width / 9${span}`), 'mm')
  const of = (wanted: string) => card?.numbers.find(({ name }) => name === wanted)
  expect(of('leg')?.source).toMatchObject({ from: 'written', text: 'closed.width / 9', place: { line: 8 } })
  expect(of('tab')?.source).toMatchObject({ from: 'usual', text: 'leg' })
  // 7 in are 177.8 mm, cut 177 mm; a ninth is 19.76 mm, and of 177 mm 19.67, at the mark of 20.
  expect([of('closed.width')?.rounding, of('leg')?.rounding]).toEqual(['down', 'nearest'])
  expect([of('leg')?.value, of('leg')?.exact].map(Number)).toEqual([20, 177.8 / 9])
})

test('a fold that is square has its formulas over one side', () => {
  const found = formulas('fold: endless\nclosed: 6 x 6 in')
  expect(Object.keys(found).length).toBeGreaterThan(0)
  for (const text of Object.values(found)) expect(text).not.toContain('closed.height')
})

test('a standard size is given as plainly as two numbers', () => {
  const named = formulas(`fold: bridge\nclosed: A6 landscape\nleg: 3/4 in${span}`)
  expect(named).toEqual(formulas(`fold: bridge\nclosed: 148 x 105 mm\nleg: 3/4 in${span}`))
  expect(named['floor.width']).toBe('closed.width - 2 * leg')
})
