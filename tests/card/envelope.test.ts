import * as fc from 'fast-check'
import Fraction from 'fraction.js'
import { describe, expect, test } from 'vitest'
import { bottomFlap, diagonal } from '../../src/card/envelopes/diagonal.ts'
import { inches, mm, toMm } from '../../src/length/length.ts'
import { cardOf, check, measure } from './block.ts'

const [seam, grid] = [inches(3, 8), inches(1, 16)]

/** The geometry, worked out here with floating-point roots: the square's side is (w + h)/√2 + 2·d. */
test('the diagonal sheet is on the next mark, or the one after it where the ruler would take the clearance', () => {
  const size = fc.integer({ min: 60, max: 300 })
  fc.assert(
    fc.property(size, size, fc.integer({ min: 0, max: 30 }), (w, h, tenths) => {
      const [thick, least] = [new Fraction(tenths, 10), { width: mm(w), height: mm(h) }]
      const all = { width: mm(thick.add(w)), height: mm(thick.add(h)) }
      const { sheet, score, inside, outside } = diagonal({ inside: all, least, grid }, seam)
      const [d, g, side, p] = [seam, grid, sheet.width, score].map(toMm) as [number, number, number, number]
      const exact = (w + h + tenths / 5) / Math.SQRT2 + 2 * d
      expect(side).toBeGreaterThanOrEqual(exact - 1e-9)
      expect(side).toBeLessThan(exact + 2 * g)
      const [short, long] = [(p - d) * Math.SQRT2, (side - p - d) * Math.SQRT2]
      expect(short).toBeGreaterThanOrEqual(Math.min(w, h) + tenths / 10 - 1e-9)
      expect(long).toBeGreaterThanOrEqual(Math.max(w, h) - 1e-9)
      const [across, up] = w > h ? [long, short] : [short, long]
      expect(toMm(inside.width)).toBeCloseTo(Math.floor(across / g + 1e-9) * g, 6)
      expect(toMm(inside.height)).toBeCloseTo(Math.floor(up / g + 1e-9) * g, 6)
      expect(across - toMm(outside.width)).toBeGreaterThan(-1e-9)
      expect(across - toMm(outside.width)).toBeLessThan(0.01)
      expect(Math.abs(up - toMm(outside.height) - 0.005)).toBeLessThan(0.005 + 1e-9)
    }),
  )
})

// w/2 + d·√2 against h, by root: 7.25/2 + 0.530 = 4.16; 4.66; 5.16 > 3.25; 3.53.
test.each([
  [7.25, 5.25, false],
  [8.25, 6.25, false],
  [9.25, 3.25, true],
  [6, 6, false],
])('the bottom flap of a %d × %d in inside passes the opposite edge: %s', (w, h, expected) => {
  const inside = { width: inches(w), height: inches(h) }
  const sheet = diagonal({ inside, least: inside, grid }, seam)
  const { reach, passes } = bottomFlap(sheet, grid)
  expect(passes).toBe(expected)
  const exact = w / 2 + 0.375 * Math.SQRT2
  expect(exact <= h).toBe(!expected)
  // The sheet is on the ruler, so the flap may reach a mark further, and the text says the next mark.
  expect(toMm(reach) / 25.4 - exact).toBeGreaterThan(0)
  expect(toMm(reach) / 25.4 - exact).toBeLessThan(3 / 16)
})

test('the thickness is taken in on both edges', () => {
  const text = 'fold: side\nclosed: 5 x 7 in\nenvelope: {make: side seam, clearance: 1/4 in}'
  expect(measure(cardOf(text), 'envelope.inside')).toBe('5 1/4 × 7 1/4 in')
  expect(measure(cardOf(text, { thickness: () => inches(1, 8) }), 'envelope.inside')).toBe('5 3/8 × 7 3/8 in')
  const diagonal = text.replace('side seam', 'diagonal')
  // By hand: (5 3/8 + 7 3/8)/√2 + 2 · 3/8 = 9.766, so the next mark is 9 13/16.
  expect(measure(cardOf(diagonal, { thickness: () => inches(1, 8) }), 'envelope.width')).toBe('9 13/16 in')
})

/** Whatever the ruler does, a thick card goes in, however small the clearance, and a thin one keeps its clearance. */
test('inside, there is room for the card with its thickness, and for the card with its clearance', () => {
  const part = fc.integer({ min: 0, max: 16 })
  fc.assert(
    fc.property(fc.integer({ min: 64, max: 140 }), part, part, part, (n, more, thick, room) => {
      const [w, h] = [n / 16 + more / 16, n / 16]
      const text = `fold: side\nclosed: ${n + more}/16 x ${n}/16 in\nenvelope: {clearance: ${room}/16 in}`
      const { envelope } = cardOf(text, { thickness: () => inches(thick, 40) })
      const { width = mm(0), height = mm(0) } = envelope?.outside ?? {}
      const slack = [toMm(width) / 25.4 - w, toMm(height) / 25.4 - h]
      for (const x of slack) expect(x).toBeGreaterThan(Math.max(room / 16, thick / 40) - 0.0005)
    }),
    { numRuns: 50 },
  )
})

test('a side seam: front, back and flaps add up to the sheet', () => {
  const card = cardOf(
    'fold: side\nclosed: 9 x 3 in\nenvelope: {make: side seam, clearance: 1/4 in, flap: 1/2 in}',
  )
  expect([measure(card, 'envelope.inside'), measure(card, 'envelope.size')]).toEqual([
    '9 1/4 × 3 1/4 in',
    '10 1/4 × 7 in',
  ])
})

describe('an envelope that cannot be made says why, with numbers and a cure', () => {
  const findings = (closed: string, envelope: string, thick = inches(0)) => {
    const text = `fold: side\nclosed: ${closed}\nenvelope: ${envelope}`
    const { card, findings } = check(text, { thickness: () => thick })
    return [card?.envelope?.make, ...findings.map((f) => [f.rule, f.severity, f.message, f.suggestion])]
  }

  // By root: 9.25/2 + 0.53 = 5.155; the sheet is 9 5/8 and the score 2 11/16, so (9.625 - 2.6875 + 0.375)/√2 = 5.17.
  test('a long thin card gets a side seam, and is told how far the flap would reach', () => {
    expect(findings('9 x 3 in', 'diagonal')).toEqual([
      'side seam',
      [
        'long-card',
        'warning',
        'This card is too long and thin for a diagonal envelope: its bottom flap would reach up 5 3/16 in and pass the opposite edge, as the inside is only 3 1/4 in high; a side seam is used',
        'Write `make: side seam`',
      ],
    ])
  })

  // A 4 in card with a 2 in seam: 2.125 + 2.83 = 4.95, and the inside, up to the ruler, (5 1/16 - 2)·√2 = 4.33. With the
  // seam that is advised the diagonal one is made, with the next mark it is not.
  test('where a narrower seam would do, that is the cure', () => {
    const [make, ...told] = findings('4 x 4 in', '{seam: 2 in}')
    const [rule, , message, suggestion] = told[0] as string[]
    expect([make, rule]).toEqual(['side seam', 'long-card'])
    expect(message).toMatch(
      /^With a seam of 2 in its bottom flap would reach up 5 in .* only 4 5\/16 in high/,
    )
    expect(suggestion).toBe('Write `seam: 1 1/2 in` for a diagonal envelope, or `make: side seam`')
    expect(findings('4 x 4 in', '{seam: 1 1/2 in}')).toEqual(['diagonal'])
    expect(findings('4 x 4 in', '{seam: 1 9/16 in}')[0]).toBe('side seam')
  })

  test.each([
    ['{seam: 0 in}', 'error', 'not lap each other', 'Write `seam: 1/8 in` or more'],
    ['{seam: 1/16 in}', 'warning', 'by only 1/8 in', 'Write `seam: 1/8 in` or more'],
    ['{make: side seam, flap: 0 in}', 'error', 'not lap each other', 'Write `flap: 1/4 in` or more'],
    ['{make: side seam, flap: 3/16 in}', 'warning', 'by only 3/16 in', 'Write `flap: 1/4 in` or more'],
    ['{make: side seam, flap: 3 in}', 'error', 'would reach down 6 in', 'Write `flap: 2 5/8 in` or less'],
  ])('%s', (envelope, severity, said, cure) => {
    const [make, [rule, how, message, suggestion] = []] = findings('7 x 5 in', envelope)
    expect([rule, how, suggestion]).toEqual(['envelope-flaps', severity, cure])
    expect(message).toContain(said)
    expect(make === undefined).toBe(severity === 'error')
  })

  test('side flaps that would pass each other', () => {
    const [, [rule, , message, suggestion] = []] = findings('3 x 7 in', '{make: side seam, flap: 2 in}')
    expect([rule, suggestion]).toEqual(['envelope-flaps', 'Write `flap: 1 5/8 in` or less'])
    expect(message).toContain('the side flaps would pass each other, as the inside is only 3 1/4 in wide')
  })

  test('a clearance below nothing', () => {
    const [make, [rule] = []] = findings('7 x 5 in', '{clearance: -1/4 in}')
    expect([make, rule]).toEqual([undefined, 'envelope-clearance'])
  })

  test('a box: an envelope is folded round nothing that is deeper than half its shorter side', () => {
    expect(findings('7 x 5 in', 'diagonal', inches(5, 2))).toEqual(['diagonal'])
    expect(findings('4 x 4 in', 'diagonal', inches(127, 32))).toEqual([
      undefined,
      [
        'envelope-depth',
        'error',
        'Shut, this card is 4 in deep and only 4 in across, so an envelope cannot be folded round it',
        'Take `envelope` out of the card block, and send the card in a box',
      ],
    ])
  })
})
