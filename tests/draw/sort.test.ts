import fc from 'fast-check'
import { expect, test } from 'vitest'
import type { Piece } from '../../src/card/structure.ts'
import { cameraAt, frontLeft } from '../../src/draw/camera.ts'
import { type Face, facesOf } from '../../src/draw/face/face.ts'
import { paintOrder } from '../../src/draw/sort.ts'
import { inSpace } from '../../src/draw/space.ts'
import type { Placement, Vector } from '../../src/fold/pose.ts'
import { mm } from '../../src/length/length.ts'
import { cardOf, cardsAt, harbour } from './cards.ts'
import { wronglyHidden } from './rays.ts'

const everyCard = cardsAt()

const none = {
  pieces: [],
  plates: [],
  hinges: [],
  bonds: [],
  stops: [],
  display: { angles: [], plate: '', rests: 'flat', turn: 0 },
} as const
const camera = cameraAt(30, 20)

/** A rectangle in space from its corner, its two directions and its size. */
function sheet(name: string, origin: Vector, right: Vector, up: Vector, w: number, h: number): Face {
  const normal: Vector = [
    right[1] * up[2] - right[2] * up[1],
    right[2] * up[0] - right[0] * up[2],
    right[0] * up[1] - right[1] * up[0],
  ]
  const place: Placement = { origin, right, up, normal }
  const size = { width: mm(Math.round(w)), height: mm(Math.round(h)) }
  const piece: Piece = {
    name,
    kind: 'base',
    stock: { name: 'card', caliper: mm(0) },
    count: 1,
    size,
    cuts: [],
  }
  const corners = (
    [
      [0, 0],
      [w, 0],
      [w, h],
      [0, h],
    ] as const
  ).map((p) => ({ at: inSpace(place, p), edge: 'cut' as const }))
  return { plate: { name, piece: name, outline: [], holes: [] }, piece, place, outline: corners, holes: [] }
}
const names = (faces: readonly Face[]) => faces.map((f) => f.plate.name)
const [x, y, z]: Vector[] = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
]
const upright = (name: string, depth: number) => sheet(name, [0, 0, depth], x as Vector, y as Vector, 40, 30)

test('what is wholly behind is painted first, in whatever order it comes', () => {
  const [near, far] = [upright('near', 20), upright('far', 0)]
  expect(names(paintOrder([near, far], none, camera))).toEqual(['far', 'near'])
  expect(names(paintOrder([far, near], none, camera))).toEqual(['far', 'near'])
})

test('the check itself sees what is hidden wrongly', () => {
  expect(wronglyHidden([upright('near', 20), upright('far', 0)], camera, { most: 0.5 })).toEqual([
    expect.stringMatching(/^far hides near at \d+ spots by 24\.576 mm$/),
  ])
})

test('a large sheet whose middle is nearer does not hide a small one in front of it', () => {
  // The floor reaches far to the front; the small sheet stands upright on its back part.
  const floor = sheet('floor', [0, 0, 100], x as Vector, [0, 0, -1], 100, 200)
  const small = sheet('small', [40, 0.6, -60], x as Vector, y as Vector, 20, 20)
  expect(names(paintOrder([small, floor], none, camera))).toEqual(['floor', 'small'])
})

test('three bars that each hide the end of the next are split', () => {
  const turned = (degrees: number): [Vector, Vector] => {
    const a = (degrees * Math.PI) / 180
    return [
      [Math.cos(a), Math.sin(a), 0.12],
      [-Math.sin(a), Math.cos(a), 0],
    ]
  }
  const bars = [0, 120, 240].map((degrees, i) => {
    const [along, across] = turned(degrees)
    const long = Math.hypot(...along)
    const right = along.map((n) => n / long) as unknown as Vector
    // Each starts at one corner of a triangle and overhangs the next.
    const start: Vector = [-along[0] * 45 + across[0] * -18, -along[1] * 45 + across[1] * -18, -5.4]
    return sheet(`bar ${i + 1}`, start, right, across, 90, 10)
  })
  const front = cameraAt(0, 0)
  const painted = paintOrder(bars, none, front)
  expect(painted.length).toBeGreaterThan(3)
  expect(wronglyHidden(painted, front, { most: 0.02 })).toEqual([])
})

test('two sheets that pass through one another are split where they meet', () => {
  const cross = [upright('a', 10), sheet('b', [20, 0, -10], z as Vector, y as Vector, 40, 30)]
  const painted = paintOrder(cross, none, camera)
  expect(painted).toHaveLength(3)
  expect(wronglyHidden(painted, camera, { most: 0.02 })).toEqual([])
})

test('sheets lying anyhow never hide what is in front of them', () => {
  const unit = fc.tuple(
    fc.double({ min: 0, max: Math.PI, noNaN: true }),
    fc.double({ min: 0, max: 2 * Math.PI, noNaN: true }),
  )
  const spot = fc.tuple(...[0, 1, 2].map(() => fc.integer({ min: -40, max: 40 })))
  const sheets = fc.array(
    fc.tuple(spot, unit, fc.integer({ min: 8, max: 60 }), fc.integer({ min: 8, max: 60 })),
    {
      minLength: 2,
      maxLength: 7,
    },
  )
  fc.assert(
    fc.property(sheets, (list) => {
      const faces = list.map(([at, [tilt, turn], w, h], i) => {
        const right: Vector = [Math.cos(turn), Math.sin(turn), 0]
        const up: Vector = [-Math.sin(turn) * Math.cos(tilt), Math.cos(turn) * Math.cos(tilt), Math.sin(tilt)]
        return sheet(`sheet ${i + 1}`, at as unknown as Vector, right, up, w, h)
      })
      expect(wronglyHidden(paintOrder(faces, none, camera), camera, { most: 0.02, givesWay: 0.7 })).toEqual(
        [],
      )
    }),
    { numRuns: 120 },
  )
})

const standing = everyCard.filter((card) => card.proof.standing)

test('every style of fold is drawn standing', () => {
  const styles = new Set(standing.map((card) => card.title.split(',')[0]))
  expect([...styles]).toEqual(
    expect.arrayContaining(['harbour', 'gate', 'side', 'z', 'letter', 'bridge', 'easel']),
  )
})

test.each(standing)('nothing farther hides what is nearer: $title', ({ card, proof }) => {
  const faces = facesOf(card.structure, proof.standing?.pose ?? new Map())
  expect(faces.length).toBeGreaterThan(1)
  const painted = paintOrder(faces, card.structure, frontLeft, proof.closed)
  expect(wronglyHidden(painted, frontLeft, { most: 0.02, givesWay: 0.7, closed: proof.closed })).toEqual([])
})

test('what is stuck on lies on what it is stuck on, however thin the paper', () => {
  const { card, proof } = cardOf(harbour, 'in', '8 x 6 in')
  const flat = new Map([...(proof.standing?.pose ?? [])])
  // All paper without thickness: the depths say nothing any more.
  for (const bond of card.structure.bonds) {
    const [own, below] = [flat.get(bond.plate), flat.get(bond.onto)]
    if (own && below) {
      const lift = own.origin[2] - below.origin[2]
      flat.set(bond.plate, { ...own, origin: [own.origin[0], own.origin[1], own.origin[2] - lift] })
    }
  }
  const order = names(paintOrder(facesOf(card.structure, flat), card.structure, frontLeft))
  const at = (name: string) => order.indexOf(name)
  expect(at('floor')).toBeLessThan(at('backdrop'))
  expect(at('left tab')).toBeLessThan(at('side strip on left tab'))
  expect(at('side strip on left tab')).toBeLessThan(at('beam'))
  expect(at('side strip on right tab')).toBeLessThan(at('sea wall'))
})
