import { type Length, larger, minus, type Size, zero } from '../length/length.ts'
import { type Affine, after, apply, applyLinear, determinant, identity, type Whole } from './affine.ts'
import type { BodyPlate } from './assembly.ts'
import type { Closed, Laid, Placement } from './pose.ts'
import type { Shut } from './shut.ts'
import { cellsOf, mapOf, type Pile, type PileCell, type PileSheet } from './thickness.ts'
import { lengthOf } from './whole.ts'

/**
 * Reads the shut card off: exact rectangles from its lower left corner, and where each plate lies in space, with its
 * real thickness. The plate that stays put has its x to the right, its y up and its face towards the viewer.
 */
export function closedOf(shut: Shut): Closed {
  const { assembly, closing, faceUp } = shut.layout
  const { model, plates } = assembly
  const shown = plates.find(({ index }) => index === model.shown)
  const laidMap = ({ body, map }: BodyPlate): Affine => after(closing.place[body] ?? identity, map)
  // Back to x and y of the plate that stays put: its map is turned round, and is so many times too large.
  const base = shown ? laidMap(shown) : identity
  const size = determinant(base)
  const back = ([u, v]: Whole): Whole => {
    const [x, y] = [u - base.e, v - base.f]
    return [base.d * x - base.b * y, base.a * y - base.c * x]
  }
  const perMm = model.perMm * BigInt(Math.round(size))
  const boxes = plates.map(({ body, rings }) =>
    boxOf(rings.flat().map((point) => back(apply(closing.place[body] ?? identity, point)))),
  )
  const whole = boxOf(boxes.flat())
  const laid = plates.map(({ index }, i): Laid => {
    const box = boxes[i] ?? whole
    return {
      plate: model.plates[index]?.name ?? '',
      faceUp: faceUp[i] ?? true,
      left: lengthOf(box[0][0] - whole[0][0], perMm),
      bottom: lengthOf(box[0][1] - whole[0][1], perMm),
      size: sizeOf(box, perMm),
    }
  })
  const toMm = (point: Whole): Whole => {
    const [x, y] = back(point)
    return [(x - whole[0][0]) / Number(perMm), (y - whole[0][1]) / Number(perMm)]
  }
  const pile = pileOf(shut, toMm)
  const cells = cellsOf(pile)
  const map = mapOf(model, cells)
  const heights = heightsOf(pile, cells)
  const pose = new Map(
    plates.map((plate, i): [string, Placement] => {
      const map = laidMap(plate)
      const linear = (axis: Whole): [number, number, number] => {
        const [u, v] = applyLinear(map, axis)
        const [p, q] = back([u + base.e, v + base.f])
        return [p / size, q / size, 0]
      }
      return [
        laid[i]?.plate ?? '',
        {
          origin: [...toMm(apply(map, [0, 0])), heights.get(plate.index) ?? 0],
          right: linear([1, 0]),
          up: linear([0, 1]),
          normal: [0, 0, faceUp[i] ? 1 : -1],
        },
      ]
    }),
  )
  return {
    isFlat: true,
    size: sizeOf(whole, perMm),
    plates: laid,
    order: shut.order.map((i) => laid[i]?.plate ?? ''),
    thickness: map.reduce((most, { thickness }) => larger(most, thickness), zero),
    map,
    pose,
  }
}

/** The shut card as a pile. @param toMm from where the closing lays things to mm of the view. */
function pileOf({ layout: { assembly, closing, faceUp }, order }: Shut, toMm: (point: Whole) => Whole): Pile {
  const { model, plates } = assembly
  const numbers = new Map(plates.map(({ index }, i) => [index, i]))
  const laid = ({ body }: BodyPlate, point: Whole) => toMm(apply(closing.place[body] ?? identity, point))
  const pileOrder = order.flatMap((i) => plates[i] ?? [])
  return {
    model,
    order: pileOrder.map(({ index }) => index),
    isFaceUp: (plate) => faceUp[numbers.get(plate) ?? -1] ?? true,
    shapes: pileOrder.map((plate) => plate.rings.map((ring) => ring.map((point) => laid(plate, point)))),
    pads: model.pads.map(({ onto, ring }) => {
      const plate = plates[numbers.get(onto) ?? -1]
      return plate ? [ring.map((point) => laid(plate, apply(plate.map, point)))] : []
    }),
  }
}

/**
 * Height of the middle of each sheet above the table, in mm, by its place in the model: each lies on the highest of
 * those below it, with the foam and the pads between.
 */
function heightsOf({ model, order }: Pile, cells: readonly PileCell[]): Map<number, number> {
  const thin = (n: number): number => n / Number(model.thinPerMm)
  const half = (plate: number): number => thin(model.plates[plate]?.caliper ?? 0) / 2
  // Cells that have the same sheets share one list of them.
  const under = new Map<number, { own: PileSheet; next: PileSheet | undefined }[]>()
  for (const sheets of new Set(cells.map((cell) => cell.sheets)))
    for (const [at, own] of sheets.entries()) {
      const known = under.get(own.plate) ?? []
      known.push({ own, next: sheets[at + 1] })
      under.set(own.plate, known)
    }
  const heights = new Map<number, number>()
  for (const plate of [...order].reverse()) {
    const bottoms = (under.get(plate) ?? []).map(({ own, next }) => {
      const below = next ? (heights.get(next.plate) ?? 0) + half(next.plate) : 0
      return below + thin(own.behind)
    })
    heights.set(plate, Math.max(0, ...bottoms) + half(plate))
  }
  return heights
}

type Box = readonly [Whole, Whole]

const boxOf = (points: readonly Whole[]): Box => {
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)]
  return [
    [Math.min(...xs), Math.min(...ys)],
    [Math.max(...xs), Math.max(...ys)],
  ]
}

const sizeOf = ([low, high]: Box, perMm: bigint): Size => {
  const span = (k: 0 | 1): Length => minus(lengthOf(high[k], perMm), lengthOf(low[k], perMm))
  return { width: span(0), height: span(1) }
}
