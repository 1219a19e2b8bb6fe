import { describe, expect, test } from 'vitest'
import { foldStyles } from '../../src/card/fold-styles.ts'
import { inCreaseOf } from '../../src/fold/in-crease.ts'
import { foldCard } from '../../src/fold/prove.ts'
import { proveCard } from '../../src/fold/prove-card.ts'
import { usualGrid } from '../../src/length/grid.ts'
import { mm, toMm, type Unit } from '../../src/length/length.ts'
import { cardOf, measure } from '../card/block.ts'
import { card, sheet, strip, stuck } from './build.ts'

const prove = (text: string, unit: Unit = 'in') =>
  proveCard({ name: 'card', text, place: { line: 1, column: 1, offset: 0 } }, { unit, grid: usualGrid[unit] })

const setbacksOf = (text: string, unit: Unit = 'in') =>
  prove(text, unit).findings.filter(({ rule }) => rule === 'setback')

const side = 'fold: side\nclosed: 5 x 7 in\nbase: {stock: white card, caliper: 0.4 mm}\n'

describe('what lies in a crease', () => {
  const spread = strip({
    panels: [
      ['front', mm(50)],
      ['back', mm(50)],
    ],
    folds: 'V',
    across: mm(40),
    caliper: mm(1),
  })

  test('sheets, foam and letters between its plates, by their distance from it', () => {
    const structure = {
      ...card({
        parts: [spread, sheet('mat', mm(30), mm(40), mm(2))],
        bonds: [stuck('mat', 'back', mm(55), mm(0), { height: mm(3) })],
        plate: 'back',
      }),
      pads: [
        {
          name: 'letter',
          onto: 'front',
          side: 'face',
          outline: [
            { x: mm(20), y: mm(0) },
            { x: mm(40), y: mm(0) },
            { x: mm(40), y: mm(40) },
            { x: mm(20), y: mm(40) },
          ],
          height: mm(4),
        } as const,
      ],
    }
    const { closed } = foldCard(structure)
    const [crease] = structure.hinges
    const places = closed && crease ? inCreaseOf(closed)(crease) : []
    // From the crease: the mat is at 5 to 35, the letter, facing it, at 10 to 30.
    expect(places.map((p) => [toMm(p.distance), toMm(p.thickness), p.plates])).toEqual([
      [0, 0, []],
      [5, 5, ['mat']],
      [10, 9, ['mat']],
      [30, 5, ['mat']],
      [35, 0, []],
    ])
  })

  test('nothing in a crease that lies open when the card is shut', () => {
    const { card: bridge, proof } = prove(foldStyles.get('bridge')?.starter ?? '')
    const inCrease = proof?.closed && inCreaseOf(proof.closed)
    const folded = bridge?.structure.hinges.filter((crease) => (inCrease?.(crease) ?? []).length > 0)
    // Shut, only the right leg is folded: onto the floor, and its tab back over it.
    expect(folded?.map(({ between }) => between)).toEqual([
      ['floor', 'right leg'],
      ['right leg', 'right tab'],
    ])
  })
})

describe('a layer too near to a crease that closes over it', () => {
  const raised = (border: string, raise: string) =>
    `${side}layers:\n  mat: {on: back, border: {left: ${border}, right: 1 in}, caliper: 0.5 mm, raise: ${raise}}`

  test('is told with its edge, what it is and what it needs, and what is said cures it', () => {
    // 0.5 mm and 2 mm of foam: over 1/16 in = 1.5875 mm, under 1/8 in = 3.175 mm.
    const found = setbacksOf(raised('1/16 in', '2 mm'))
    expect(found).toEqual([
      {
        rule: 'setback',
        severity: 'warning',
        message:
          'The left edge of `mat` is 1/16 in from a valley crease of `back`, and what folds around it is 0.098 in thick, so it will buckle when the card shuts',
        suggestion: 'Leave a border of at least 1/8 in at its left edge, or write `auto` for it',
        place: expect.objectContaining({ line: 5 }),
      },
    ])
    expect(setbacksOf(raised('1/8 in', '2 mm'))).toEqual([])
    expect(setbacksOf(raised('auto', '2 mm'))).toEqual([])
    expect(setbacksOf(raised('2 mm', '2 mm'), 'mm')[0]?.suggestion).toContain('at least 3 mm')
  })

  test('what faces it counts only where it faces it', () => {
    const facing = (right: string) =>
      `${side}layers:\n  mat: {on: back, border: {left: 1/16 in}, caliper: 1 mm}\n  block: {on: front, side: inside, border: {left: 1 in, right: ${right}}, caliper: 1 mm, raise: 1 mm}`
    // Together 3 mm thick, from 1/8 in = 3.175 mm on; where the block is farther from the crease than that, all is well.
    expect(setbacksOf(facing('1/8 in'))).toEqual([])
    expect(setbacksOf(facing('1/16 in')).map((f) => [f.message.slice(0, 24), f.suggestion])).toEqual([
      [
        'The left edge of `mat` i',
        'Leave a border of at least 1/8 in at its left edge, or write `auto` for it',
      ],
      [
        'The right edge of `block',
        'Leave a border of at least 1/8 in at its right edge, or write `auto` for it',
      ],
    ])
  })

  test('a layer on a layer keeps off by both borders', () => {
    const on = (below: string, own: string) =>
      `${side}layers:\n  mat: {on: back, border: {left: ${below}}, caliper: 0.5 mm}\n  block: {on: mat, border: {left: ${own}, right: 1 in}, caliper: 1 mm, raise: 6 mm}`
    // 0.5 + 1 + 6 mm = 7.5 mm, on the ruler 5/16 in, of which the mat's border keeps 1/16 in.
    const [found, ...more] = setbacksOf(on('1/16 in', '1/16 in'))
    expect(found?.message).toContain('The left edge of `block` is 1/8 in from a valley crease of `back`')
    expect(found?.suggestion).toContain('at least 1/4 in at its left edge')
    expect(more).toEqual([])
    expect(setbacksOf(on('1/16 in', '1/4 in'))).toEqual([])
    expect(setbacksOf(on('1/16 in', 'auto'))).toEqual([])
    expect(setbacksOf(on('auto', 'auto'))).toEqual([])
  })

  test('letters count', () => {
    const lettered = (left: string, raise: string) =>
      `${side}layers:\n  mat: {on: back, border: {left: ${left}}, caliper: 0.5 mm}\nlettering:\n  name: {on: mat, letters: AHOY, widths: 1/2 in, margin: 0 in, caliper: 0.5 mm, raise: ${raise}}`
    expect(setbacksOf(lettered('1/16 in', '0 mm'))).toEqual([])
    // By hand: 4 15/16 in less four letters leave three gaps of 15/16 in, so the first letter is 1/16 in from the mat's
    // edge, 1/8 in = 3.175 mm from the crease. 0.5 + 0.5 + 2 mm are less than that, 0.5 + 0.5 + 3 mm more.
    expect(setbacksOf(lettered('1/16 in', '2 mm'))).toEqual([])
    expect(setbacksOf(lettered('1/16 in', '3 mm')).map((f) => f.suggestion)).toEqual([
      'Leave a border of at least 3/16 in at its left edge, or write `auto` for it',
    ])
    expect(setbacksOf(lettered('3/16 in', '3 mm'))).toEqual([])
    expect(setbacksOf(lettered('auto', '3 mm'))).toEqual([])
  })

  test('panels that fold in between count for what is beside the outer crease', () => {
    const letter = (left: string, caliper: string) =>
      `fold: letter\nclosed: 4 x 6 in\nbase: {stock: board, caliper: ${caliper}}\nlayers:\n  note: {on: back, border: {left: ${left}, right: 1 in}, caliper: 1 mm}`
    // Beside the cover's crease the note lies under the tuck: 1 mm and the caliper of the tuck.
    expect(setbacksOf(letter('1/16 in', '0.5 mm'))).toEqual([])
    expect(setbacksOf(letter('1/16 in', '1 mm')).map((f) => f.suggestion)).toEqual([
      'Leave a border of at least 1/8 in at its left edge, or write `auto` for it',
    ])
    expect(setbacksOf(letter('auto', '1 mm'))).toEqual([])
    const { card: built } = prove(letter('auto', '1 mm'))
    expect(built && measure(built, 'note.border.left')).toBe('1/8 in')
  })
})

describe.each([...foldStyles.values()])('$name', (style) => {
  /** Panels that take a layer: rectangles with room for a border. */
  const panels = cardOf(style.starter).structure.plates.flatMap(({ name, outline }) => {
    const [xs, ys] = [outline.map(({ x }) => toMm(x)), outline.map(({ y }) => toMm(y))]
    const [width, height] = [Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys)]
    const isRectangle = new Set(xs).size === 2 && new Set(ys).size === 2 && outline.length === 4
    return style.panels[name] && isRectangle && Math.min(width, height) > 25 ? [name] : []
  })

  /** A raised layer on both sides of each of them. */
  const layered = (unit: Unit, border: string) => {
    const base = style.starter.replace(/^(layers|spans|apertures|lettering):\n(?: .*(?:\n|$))*/gm, '')
    const layers = panels.flatMap((panel, i) =>
      ['inside', 'outside'].map(
        (face) =>
          `  ${face} ${i}: {on: ${panel}, side: ${face}, border: ${border}, caliper: 0.${(i % 5) + 3} mm, raise: ${i % 3} mm}`,
      ),
    )
    return prove(`${base.trimEnd()}\nlayers:\n${layers.join('\n')}`, unit)
  }

  test('a border that is left to the thickness is never less than the shut card needs', () => {
    for (const unit of ['in', 'mm'] as const) {
      const { card: built, findings } = layered(unit, 'auto')
      expect(findings.filter(({ rule }) => rule === 'setback')).toEqual([])
      expect(built, JSON.stringify(findings)).toBeDefined()
    }
  })

  test('a card whose layers touch its creases is told for it', () => {
    const { card: built, findings } = layered('mm', '0 mm')
    const closing = built?.structure.hinges.some(({ between }) =>
      between.some((name) => panels.includes(name)),
    )
    expect(findings.some(({ rule }) => rule === 'setback')).toBe(closing)
  })
})
