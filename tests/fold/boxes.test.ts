import { expect, test } from 'vitest'
import type { Bend, Fold, Hinge, Plate, Structure } from '../../src/card/structure.ts'
import { foldCard } from '../../src/fold/prove.ts'
import { type Length, mm, toMm, zero } from '../../src/length/length.ts'
import { card, pieceOf, point, rectangle, strip, stuck } from './build.ts'
import { troublesIn } from './checker.ts'

const whole = { gap: 1e-5, thickness: 1 }

const upright = (hinges: readonly Hinge[]): Bend[] =>
  hinges.map(({ between }) => ({ hinge: between, degrees: 90 }))

/** A square bottom with four walls, on a sheet three times as wide; x and y count in walls. */
function cross(side: Length, fold: Fold = 'valley', caliper: Length = mm(0)): Structure {
  const at = (x: number, y: number) => rectangle(side.mul(x) as Length, side.mul(y) as Length, side, side)
  const plate = (name: string, x: number, y: number): Plate => ({
    name,
    piece: 'cross',
    outline: at(x, y),
    holes: [],
  })
  const [one, two] = [side, side.mul(2) as Length]
  const hinge = (name: string, x0: Length, y0: Length, x1: Length, y1: Length): Hinge => ({
    between: ['bottom', name],
    line: { from: point(x0, y0), to: point(x1, y1) },
    fold,
  })
  const size = { width: side.mul(3) as Length, height: side.mul(3) as Length }
  const hinges = [
    hinge('left', one, one, one, two),
    hinge('right', two, one, two, two),
    hinge('front', one, one, two, one),
    hinge('rear', one, two, two, two),
  ]
  return {
    pieces: [pieceOf('cross', size, caliper)],
    plates: [
      plate('bottom', 1, 1),
      plate('left', 0, 1),
      plate('right', 2, 1),
      plate('front', 1, 0),
      plate('rear', 1, 2),
    ],
    hinges,
    bonds: [],
    stops: [],
    shut: upright(hinges),
    display: {
      plate: 'bottom',
      rests: 'flat',
      turn: 0,
      angles: hinges.map(({ between }) => ({ hinge: between, degrees: 45 })),
    },
  }
}

test('a cross of five squares is a box of one', () => {
  const structure = cross(mm(40))
  const { closed, standing, findings, between, freedom } = foldCard(structure)
  expect(findings).toEqual([])
  expect(closed?.isFlat).toBe(false)
  expect([closed?.size.width, closed?.size.height, closed?.thickness].map((x) => x && toMm(x))).toEqual([
    40, 40, 40,
  ])
  expect(freedom).toBe(4)
  // Opened half way each wall reaches 40 / √2 beyond the bottom, and as high.
  expect(standing?.width).toBeCloseTo(40 + 2 * (40 / Math.SQRT2), 9)
  expect(standing?.height).toBeCloseTo(40 / Math.SQRT2, 9)
  for (const pose of [closed?.pose, between(0.5), standing?.pose])
    expect(pose && troublesIn(structure, pose, whole)).toEqual([])
})

test('letters on the outside of the bottom count in the depth, those inside and on the walls do not', () => {
  const deep = (onto: string, side: 'face' | 'back') => {
    const outline = rectangle(mm(50), mm(50), mm(10), mm(10))
    const letter = { name: 'letter', onto, side, outline, height: mm(2) }
    const { closed } = foldCard({ ...cross(mm(40)), pads: [letter] })
    return closed && toMm(closed.thickness)
  }
  expect([deep('bottom', 'back'), deep('bottom', 'face'), deep('left', 'back')]).toEqual([42, 40, 40])
})

test('walls fold up from the face or away from it', () => {
  const [up, down] = (['valley', 'mountain'] as const).map((fold) => foldCard(cross(mm(40), fold)).closed)
  const heightOf = (closed: typeof up) => closed?.pose.get('left')?.origin[2] ?? Number.NaN
  const bottom = (closed: typeof up) => closed?.pose.get('bottom')?.origin[2] ?? Number.NaN
  expect(heightOf(up)).toBeGreaterThan(bottom(up) + 39)
  expect(heightOf(down)).toBeLessThan(bottom(down) - 39)
})

test('the thickness of a box is its depth with its sheets', () => {
  const { closed } = foldCard(cross(mm(40), 'valley', mm(1)))
  // Half a sheet below the middle of the bottom.
  expect(closed && toMm(closed.thickness)).toBeCloseTo(40.5, 9)
})

const tube = (last: number) =>
  strip({
    panels: [
      ['base', mm(50)],
      ['right', mm(20)],
      ['lid', mm(50)],
      ['left', mm(last)],
      ['tab', mm(10)],
    ],
    folds: 'VVVV',
    across: mm(30),
  })

/** A tube of four walls, whose tab is stuck inside the base. */
function sleeve(last: number, known = 1): Structure {
  const parts = tube(last)
  const bonds = [stuck('tab', 'base', mm(-120 - last), zero)]
  const angles = [['base', 'right', 60]] as const
  return {
    ...card({ parts: [parts], bonds, plate: 'base', angles }),
    shut: upright(parts.hinges.slice(0, known)),
  }
}

test('a ring of walls closes by itself once one corner is known', () => {
  const structure = sleeve(20)
  const { closed, standing, findings, freedom } = foldCard(structure)
  expect(findings).toEqual([])
  expect([closed?.size.width, closed?.size.height, closed?.thickness].map((x) => x && toMm(x))).toEqual([
    50, 30, 20,
  ])
  expect(freedom).toBe(1)
  for (const pose of [closed?.pose, standing?.pose])
    expect(pose && troublesIn(structure, pose, whole)).toEqual([])
})

test('does-not-close: walls that do not meet are told with the gap', () => {
  const { closed, findings } = foldCard(sleeve(17, 4))
  expect(closed).toBeUndefined()
  expect(findings).toMatchObject([
    {
      rule: 'does-not-close',
      message: 'When the walls stand, `left` and `tab` do not meet: they are 3 mm apart',
    },
  ])
})
