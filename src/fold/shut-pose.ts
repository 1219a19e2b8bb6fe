import { type Length, minus, type Size } from '../length/length.ts'
import { type Affine, after, apply, applyLinear, determinant, identity, type Whole } from './affine.ts'
import type { BodyPlate } from './assembly.ts'
import type { Closed, Laid, Placement } from './pose.ts'
import type { Shut } from './shut.ts'
import { thicknessOf } from './thickness.ts'
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
  const heights = heightsOf(shut)
  const pose = new Map(
    plates.map((plate, i): [string, Placement] => {
      const map = laidMap(plate)
      const [x, y] = back(apply(map, [0, 0]))
      const mm = (n: number): number => n / Number(perMm)
      const linear = (axis: Whole): [number, number, number] => {
        const [u, v] = applyLinear(map, axis)
        const [p, q] = back([u + base.e, v + base.f])
        return [p / size, q / size, 0]
      }
      return [
        laid[i]?.plate ?? '',
        {
          origin: [mm(x - whole[0][0]), mm(y - whole[0][1]), heights[i] ?? 0],
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
    thickness: thicknessOf(shut.layout),
    pose,
  }
}

/** Height of the middle of each sheet above the table, in mm: each lies on the highest of those below it. */
function heightsOf({ layout, order }: Shut): number[] {
  const { groups } = layout
  const { model, plates } = layout.assembly
  const thin = (n: number): number => n / Number(model.thinPerMm)
  const caliper = (i: number): number => thin(model.plates[plates[i]?.index ?? 0]?.caliper ?? 0)
  const heights: number[] = plates.map(() => 0)
  const below: number[] = []
  for (const i of [...order].reverse()) {
    const resting = below.filter((j) => groups.some((shapes) => shapes.includes(i) && shapes.includes(j)))
    const foam = (j: number): number =>
      thin(
        model.bonds.find(
          ({ plate, onto }) =>
            (plate === plates[i]?.index && onto === plates[j]?.index) ||
            (plate === plates[j]?.index && onto === plates[i]?.index),
        )?.height ?? 0,
      )
    const tops = resting.map((j) => (heights[j] ?? 0) + caliper(j) / 2 + foam(j))
    heights[i] = Math.max(0, ...tops) + caliper(i) / 2
    below.push(i)
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
