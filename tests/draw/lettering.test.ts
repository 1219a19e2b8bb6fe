import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { drawFigure } from '../../src/draw/draw.ts'
import { formatBare, formatLength } from '../../src/length/format.ts'
import { figureNames } from '../../src/lesson/figure-target.ts'
import { wordingOf } from '../../src/wording/wording.ts'
import { cardOf, gate, harbour, sizes, units } from './cards.ts'
import { collisions } from './collide.ts'
import { drawn, textsOf } from './figures.ts'
import { attribute, byClass, loopsOf } from './svg.ts'

/** From left to right, the lower and upper x of each path of a class. */
const across = (svg: Parameters<typeof byClass>[0], name: string) =>
  byClass(svg, name).map((path) => {
    const xs = loopsOf(path)
      .flat()
      .map(([x]) => x)
    return [Math.min(...xs), Math.max(...xs)] as const
  })

const lettered = (letters: string, more = '', closed = '7 x 5 in') => `fold: bridge
closed: ${closed}
leg: 3/4 in
base: {stock: blue card}
spans:
  wall: {height: 1 1/4 in, at: bottom, stock: grey card}
lettering:
  name: {on: wall, letters: ${letters}${more}}`

describe.each(units)('in %s', (unit) => {
  test.each(sizes)('at %s every letter is drawn where its mark says', (size) => {
    const card = cardOf(harbour, unit, size)
    const { svg } = drawn('lettering', card)
    const [strip] = across(svg, 'stock')
    const rooms = across(svg, 'letter-room')
    const [name] = card.card.lettering
    const wall = card.card.structure.pieces.find((p) => p.name === 'sea wall')
    if (!strip || !name || !wall) throw new Error('There is a sea wall with a name')
    const mmEach = (strip[1] - strip[0]) / wall.size.width.valueOf()
    expect(rooms).toHaveLength(7)
    for (const [i, [left, right]] of rooms.entries()) {
      expect((left - strip[0]) / mmEach).toBeCloseTo(name.marks[i]?.valueOf() ?? -1, 1)
      expect((right - left) / mmEach).toBeCloseTo(name.widths[i]?.valueOf() ?? -1, 1)
    }
    // The lines that the numbers belong to run up to the left edges.
    const lines = byClass(svg, 'extension').map((l) => Number(attribute(l, 'x1')))
    for (const [left] of rooms) expect(lines.some((x) => Math.abs(x - left) < 0.002)).toBe(true)
    expect(textsOf(svg, 'score')).toEqual(name.marks.map((m) => formatBare(m, unit)))
    expect(textsOf(svg, 'letter')).toEqual([...'HARBOUR'])
    expect(textsOf(svg, 'gap')).toEqual([formatLength(name.gap, unit)])
  })
})

/** `1 3/16` as a number. */
const numberOf = (words: string): number =>
  (words.match(/[\d/]+/g) ?? []).reduce((sum, part) => {
    const [over, under] = part.split('/').map(Number)
    return sum + (over ?? 0) / (under ?? 1)
  }, 0)

test('the printed margins, letters and gaps add up to the strip of 8 in', () => {
  const { svg } = drawn('lettering', cardOf(harbour))
  const margins = textsOf(svg, 'margin').map(numberOf)
  const [gap = 0] = textsOf(svg, 'gap').map(numberOf)
  const width = numberOf(textsOf(svg, 'legend').find((words) => words.startsWith('each letter')) ?? '')
  expect(margins).toHaveLength(2)
  expect((margins[0] ?? 0) + (margins[1] ?? 0) + 7 * width + 6 * gap).toBe(8)
})

test('what is asked for stands in it and nothing else', () => {
  const card = cardOf(harbour)
  const of = (labels: readonly ('marks' | 'gap' | 'size' | 'all' | 'none')[]) =>
    drawn('lettering', card, undefined, 'in', { labels }).svg
  expect(textsOf(of(['none']), 'measure')).toEqual([])
  expect(textsOf(of(['none']), 'legend')).toEqual([])
  expect(textsOf(of(['gap']), 'score')).toEqual([])
  expect(textsOf(of(['marks']), 'gap')).toEqual([])
  expect(textsOf(of(['size']), 'legend')).toEqual(['sea wall: 8 × 1 3/16 in'])
  expect(textsOf(of(['all']), 'measure')).toEqual(
    expect.arrayContaining(['8 in', '1/2 in', '5/16 in', '1 7/16']),
  )
})

test('where widths differ each stands over its letter, or else in a list', () => {
  const widths = ', widths: [1 in, 1/2 in, 3/4 in]'
  const { svg, alternative } = drawn('lettering', cardOf(lettered('SEA', widths)))
  expect(textsOf(svg, 'width')).toEqual(['1', '1/2', '3/4'])
  expect(alternative).toContain('letters S, E and A. From left to right they are 1, 1/2 and 3/4 in wide.')
  const narrow = ', widths: [3/16 in, 1/16 in, 3/16 in]'
  const small = drawn('lettering', cardOf(lettered('SEA', narrow)))
  expect(textsOf(small.svg, 'width')).toEqual([])
  expect(textsOf(small.svg, 'legend')).toContain('widths from left to right: 3/16, 1/16 and 3/16 in')
})

test('it is found by its own name, by the strip it is on, and without a name', () => {
  const card = cardOf(harbour)
  const usual = drawn('lettering', card).svg
  expect(drawn('lettering', card, 'name').svg).toEqual(usual)
  expect(drawn('lettering', card, 'sea wall').svg).toEqual(usual)
  expect(figureNames(card.card)).toContain('name')
})

test('letters on a panel are drawn on that panel alone', () => {
  const block = `fold: side
closed: 5 x 7 in
base: {stock: white card}
lettering:
  greeting: {on: back, letters: HELLO, widths: 1/2 in}`
  const { svg, alternative } = drawn('lettering', cardOf(block))
  expect(textsOf(svg, 'letter')).toEqual([...'HELLO'])
  expect(alternative).toMatch(/^Back, white card, 5 × 7 in, width first, with the letters H, E, L, L and O/)
})

const refused = (block: string, of?: string) => {
  const found = drawFigure('lettering', cardOf(block), of, 'in')
  return 'findings' in found ? found.findings.map((f) => `${f.message}. ${f.suggestion}`) : []
}

test('a card without letters says what would cure it', () => {
  expect(refused(gate)).toEqual([
    'This card has no lettering to draw. Add `lettering:` to the card block, such as `lettering: {name: {on: front, letters: HELLO}}`',
  ])
  expect(refused(harbour, 'beam')).toEqual(['There are no letters on `beam`. Write `of="name"`'])
  expect(refused(harbour, 'nmae')[0]).toMatch(/^Unexpected name `nmae`.*name/)
})

test('however many letters there are, and however wide, nothing touches', () => {
  const sixteenths = fc.array(fc.integer({ min: 1, max: 14 }), { minLength: 1, maxLength: 24 })
  const words = fc.constantFrom('usual' as const, 'all' as const)
  fc.assert(
    fc.property(
      sixteenths,
      fc.boolean(),
      fc.constantFrom(...units),
      fc.integer({ min: 0, max: 12 }),
      fc.constantFrom('5 x 7 in', '7 x 5 in', '12 x 6 in'),
      words,
      fc.constantFrom({}, { maxWidth: 60, maxHeight: 50 }, { text: 18, maxWidth: 168 }),
      (all, same, unit, margin, closed, labels, room) => {
        const widths = all.map((n) => `${same ? all[0] : n}/16 in`)
        const more = `, widths: [${widths.join(', ')}], margin: ${margin}/16 in`
        let card: ReturnType<typeof cardOf>
        try {
          card = cardOf(lettered('W'.repeat(all.length), more, closed), unit)
        } catch {
          return fc.pre(false) // The letters do not fit the strip, which the card itself tells.
        }
        const figure = drawn('lettering', card, undefined, unit, {
          ...room,
          ...(labels === 'all' && { labels: ['all'] }),
        })
        expect(collisions(figure.svg)).toEqual([])
      },
    ),
    { numRuns: 80 },
  )
})

// The words below, not the strip, take all the room there is when it is still small.
test('a strip grows into its room, however long the words below it are', () => {
  const card = cardOf(lettered('PUERTO', ', widths: 16 mm, margin: 6 mm', '180 x 120 mm'), 'mm')
  const figure = drawFigure('lettering', card, undefined, wordingOf('es', 'mm'), {
    maxWidth: 75,
    maxHeight: 76,
  })
  if (!('svg' in figure)) throw new Error('There are letters')
  const [strip] = across(figure.svg, 'stock')
  if (!strip) throw new Error('There is a strip')
  expect(strip[1] - strip[0]).toBeGreaterThan(60)
})
