import { describe, expect, test } from 'vitest'
import { foldCard } from '../../src/fold/prove.ts'
import { toMm } from '../../src/length/length.ts'
import { cardOf } from '../card/block.ts'
import { troublesIn } from './checker.ts'

const cases = (['in', 'mm'] as const).flatMap((unit) =>
  ['7 x 5 in', 'A6 portrait', '6 x 6 in'].flatMap((closed) =>
    ['diagonal', 'side seam'].map((make) => [closed, make, unit] as const),
  ),
)

describe.each(cases)('the envelope of a %s card, %s, %s', (closed, make, unit) => {
  const { envelope } = cardOf(`fold: side\nclosed: ${closed}\nenvelope: ${make}`, { unit })
  if (!envelope) throw new Error('no envelope')
  const { structure, sheet, inside, folding, stock } = envelope
  const proof = foldCard(structure)
  const caliper = toMm(stock.caliper)

  test('shuts flat, its flaps in the order in which they fold, and only its top flap moves', () => {
    expect(proof.findings).toEqual([])
    const order = proof.closed?.order ?? []
    expect(order.at(-1)).toBe('front')
    expect([order[0], order[1]]).toEqual([folding[3], folding[2]])
    expect(proof.freedom).toBe(1)
  })

  // A front that stands on its corner reaches from seam to seam of the sheet; one that lies level is the inside.
  test('has the size of its front', () => {
    const seam = unit === 'in' ? 9.525 : 10
    const [width, height] =
      make === 'diagonal'
        ? [toMm(sheet.width) - 2 * seam, toMm(sheet.width) - 2 * seam]
        : [toMm(inside.width), toMm(inside.height)]
    expect(toMm(proof.closed?.size.width ?? sheet.width)).toBeCloseTo(width, 6)
    expect(toMm(proof.closed?.size.height ?? sheet.height)).toBeCloseTo(height, 6)
  })

  // Four sheets where three flaps lie on the front; five where the side flaps of a nearly square one lap, h + 2·√2·d > w.
  test('is as thick as its sheets', () => {
    const seam = unit === 'in' ? 9.525 : 10
    const sides = [toMm(inside.width), toMm(inside.height)].sort((a, b) => a - b) as [number, number]
    const lap = make === 'diagonal' && sides[0] + 2 * Math.SQRT2 * seam > sides[1]
    expect(toMm(proof.closed?.thickness ?? stock.caliper) / caliper).toBeCloseTo(lap ? 5 : 4, 9)
  })

  test('is whole while it is opened', () => {
    const tolerance = { gap: 1e-5, thickness: 5 * caliper }
    for (const pose of [proof.closed?.pose, proof.between(0.5), proof.standing?.pose])
      expect(pose && troublesIn(structure, pose, tolerance)).toEqual([])
  })
})
