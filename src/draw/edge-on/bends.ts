import type { DrawnBar } from './bars.ts'
import type { Crossing } from './section.ts'

/** One end of a bar: -1 is its left end, 1 its right end. */
export interface End {
  readonly bar: number
  readonly side: -1 | 1
}

/** A crease that joins the ends of two bars. */
export interface Joint {
  readonly ends: readonly [End, End]
  readonly folded: boolean
}

/** How the ends of bars are drawn. All numbers are in mm on paper. */
export interface Bends {
  readonly joints: readonly Joint[]
  /** Where the outside of an end is, on the paper: of its bend, or of its cut edge. */
  readonly reach: (end: End) => number
  /** Radius of the middle of the sheet in the corners of a bend. */
  readonly radius: (joint: Joint) => number
}

/** The corners of a bend are no rounder than this, or it would look as if it were part of the width. */
const roundest = 2.2
/** Between a bend and what is inside it. */
const clear = 0.15

/** Which ends a crease joins: those that end where it is. */
export function jointsOf(bars: readonly DrawnBar[], crossings: readonly Crossing[], along: number): Joint[] {
  return crossings.flatMap(({ hinge, at, folded }): Joint[] => {
    const sides = folded
      ? ([
          [1, 1],
          [-1, -1],
        ] as const)
      : ([
          [1, -1],
          [-1, 1],
        ] as const)
    for (const [s, t] of sides) {
      const [p, q] = [
        endAt(bars, hinge.between[0], s, at * along),
        endAt(bars, hinge.between[1], t, at * along),
      ]
      if (p && q) return [{ ends: [p, q], folded }]
    }
    return []
  })
}

function endAt(bars: readonly DrawnBar[], plate: string, side: -1 | 1, x: number): End | undefined {
  const bar = bars.findIndex((one) => one.plate === plate && Math.abs(endX(one, side) - x) < 0.01)
  return bar < 0 ? undefined : { bar, side }
}

const endX = ({ middle }: DrawnBar, side: -1 | 1): number => middle.at(side < 0 ? 0 : -1)?.[0] ?? 0
const endZ = ({ middle }: DrawnBar, side: -1 | 1): number => middle.at(side < 0 ? 0 : -1)?.[1] ?? 0

/** Something that ends beside other things: a bend from its lower to its upper bar, or a cut edge. */
interface Stub {
  readonly side: -1 | 1
  readonly ends: readonly End[]
  readonly low: number
  readonly high: number
  readonly thick: number
  /** Of the middle of the sheet; a cut edge has none. */
  readonly radius: number
  /** Outwards on its side, whichever that is. */
  readonly out: number
}

/**
 * The outermost bend reaches to its crease. What lies inside it is drawn shorter by as much as the thickness of the bend
 * takes, so that nested bends lie round one another and never cross.
 */
export function bendsOf(bars: readonly DrawnBar[], joints: readonly Joint[]): Bends {
  const radii = new Map(joints.map((joint) => [joint, radiusOf(joint, bars)]))
  const joined = new Set(joints.flatMap(({ ends }) => ends.map(keyOf)))
  const stubOf = (ends: readonly End[], radius: number): Stub => {
    const own = ends.flatMap(({ bar, side }) => {
      const one = bars[bar]
      return one ? [{ z: endZ(one, side), x: endX(one, side) * side, thick: one.thick }] : []
    })
    const side = ends[0]?.side ?? 1
    const [zs, thick] = [own.map(({ z }) => z), Math.max(...own.map((one) => one.thick))]
    return { side, ends, low: Math.min(...zs), high: Math.max(...zs), thick, radius, out: own[0]?.x ?? 0 }
  }
  const bends = joints
    .filter(({ folded }) => folded)
    .map((joint) => stubOf(joint.ends, radii.get(joint) ?? 0))
    .sort((a, b) => b.high - b.low - (a.high - a.low))
  const cuts = bars.flatMap((_, bar) =>
    ([-1, 1] as const)
      .filter((side) => !joined.has(keyOf({ bar, side })))
      .map((side) => stubOf([{ bar, side }], 0)),
  )
  const placed: Stub[] = []
  const reach = new Map<string, number>()
  for (const stub of [...bends, ...cuts]) {
    const out = placed.reduce(
      (least, bend) => Math.min(least, stub.out - overlap(stub, bend, bars)),
      stub.out,
    )
    if (stub.radius > 0) placed.push({ ...stub, out })
    for (const end of stub.ends) reach.set(keyOf(end), out * stub.side)
  }
  return {
    joints,
    reach: (end) =>
      reach.get(keyOf(end)) ?? endX(bars[end.bar] ?? { plate: '', thick: 0, middle: [] }, end.side),
    radius: (joint) => radii.get(joint) ?? 0,
  }
}

export const keyOf = ({ bar, side }: End): string => `${bar}${side < 0 ? '<' : '>'}`

function radiusOf({ ends, folded }: Joint, bars: readonly DrawnBar[]): number {
  if (!folded) return 0
  const own = ends
    .map(({ bar, side }) => ({ bar: bars[bar], side }))
    .flatMap(({ bar, side }) => (bar ? [{ bar, side }] : []))
  const zs = own.map(({ bar, side }) => endZ(bar, side))
  const short = Math.min(...own.map(({ bar }) => endX(bar, 1) - endX(bar, -1)))
  const half = (Math.max(...zs) - Math.min(...zs)) / 2
  return Math.max(Math.min(half, roundest, short * 0.4), Math.min(half, (own[0]?.bar.thick ?? 0) / 2))
}

/** By how much something sticks into the bend that it lies in; nothing for what lies beside it. */
function overlap(stub: Stub, bend: Stub, bars: readonly DrawnBar[]): number {
  if (stub.side !== bend.side || stub.low <= bend.low || stub.high >= bend.high) return 0
  const begins = Math.min(
    ...stub.ends.map(
      ({ bar, side }) => endX(bars[bar] ?? { plate: '', thick: 0, middle: [] }, side < 0 ? 1 : -1) * side,
    ),
  )
  if (begins > bend.out) return 0
  const [low, high] = [stub.low - stub.thick / 2, stub.high + stub.thick / 2]
  const samples = Array.from({ length: 41 }, (_, i) => low + ((high - low) * i) / 40)
  return Math.max(0, ...samples.map((z) => outside(stub, z) + clear - inside(bend, z)))
}

/** How far out the outer surface of something is at a height. */
const outside = ({ low, high, thick, radius, out }: Stub, z: number): number =>
  out - corner(radius > 0 ? radius + thick / 2 : 0, Math.min(z - low, high - z) + thick / 2)

/** How far out the inner surface of a bend is at a height. */
const inside = ({ low, high, thick, radius, out }: Stub, z: number): number =>
  out - thick - corner(Math.max(0, radius - thick / 2), Math.min(z - low, high - z) - thick / 2)

/** How far a round corner stays back at a distance from where it begins. */
const corner = (radius: number, deep: number): number => {
  const left = radius - Math.max(0, deep)
  return left > 0 ? radius - Math.sqrt(Math.max(0, radius * radius - left * left)) : 0
}
