import type { Finding } from '../length/finding.ts'
import { type Affine, after, apply, determinant, identity, type Whole } from './affine.ts'
import type { Bodies } from './bodies.ts'
import type { Model, ModelHinge } from './model.ts'
import { sayNames } from './say.ts'

/**
 * The bodies that hang together, and the hinges between them. Every body has flat coordinates of its own, in units of
 * 1/`perMm` mm times √`norm`.
 */
export interface Assembly {
  readonly model: Model
  /** How many. The body of the plate that stays put is the first; each other one hangs on one before it. */
  readonly bodies: number
  readonly plates: readonly BodyPlate[]
  /** Hinges between bodies. */
  readonly links: readonly Link[]
  /** Hinges that bonds hold shut, within a body. */
  readonly hems: readonly Link[]
  readonly norm: number
}

export interface BodyPlate {
  /** Its place in the model. */
  readonly index: number
  readonly body: number
  /** Its place in its body, counted from the back. */
  readonly level: number
  /** Whether its face looks to the back of its body. */
  readonly over: boolean
  /** From its piece to its body. */
  readonly map: Affine
  /** Outline and windows, in its body. */
  readonly rings: readonly (readonly Whole[])[]
}

/** A hinge between plates p and q of bodies a and b: the line `lineA` of body a is the line `lineB` of body b. */
export interface Link {
  /** The two plates, by their place in the assembly. */
  readonly p: number
  readonly q: number
  readonly a: number
  readonly b: number
  readonly lineA: readonly [Whole, Whole]
  readonly lineB: readonly [Whole, Whole]
  /** Whether only one of the plates lies turned over in its body. */
  readonly over: boolean
  /** Turn of body b against body a about `lineA` when the crease bends: 1 right-handed, or -1. */
  readonly bend: number
  readonly valley: boolean
  /** How far it is bent when the card is shut, in degrees, if that is known beforehand. */
  readonly shut: number | undefined
}

/**
 * Puts bodies together in the given order.
 *
 * @param frames from each body's flat coordinates to those that the assembly counts in.
 * @returns undefined, with findings, when a crease does not lie on an edge that its two plates share.
 */
export function assemblyOf(
  model: Model,
  bodies: Bodies,
  order: readonly number[],
  frames: ReadonlyMap<number, Affine>,
  findings: Finding[],
): Assembly | undefined {
  const numbers = new Map(order.map((body, i) => [body, i]))
  const parts = order.flatMap((body) => bodies.stacks[body] ?? []).sort((a, b) => a - b)
  const plates = parts.map((index): BodyPlate => {
    const body = bodies.of[index] ?? 0
    const map = after(frames.get(body) ?? identity, bodies.maps[index] ?? identity)
    return {
      index,
      body: numbers.get(body) ?? 0,
      level: (bodies.stacks[body] ?? []).indexOf(index),
      over: determinant(map) < 0,
      map,
      rings: (model.plates[index]?.rings ?? []).map((ring) => ring.map((point) => apply(map, point))),
    }
  })
  const own = new Map(plates.map(({ index }, i) => [index, i]))
  const before = findings.length
  const links = model.hinges.flatMap((hinge): Link[] => {
    const [p, q] = [own.get(hinge.p), own.get(hinge.q)]
    return p === undefined || q === undefined ? [] : linkOf(model, plates, hinge, p, q, findings)
  })
  if (findings.length > before) return undefined
  return {
    model,
    bodies: order.length,
    plates,
    links: links.filter(({ a, b }) => a !== b),
    hems: links.filter(({ a, b }) => a === b),
    norm: Math.abs(determinant(frames.get(order[0] ?? 0) ?? identity)),
  }
}

function linkOf(
  model: Model,
  plates: readonly BodyPlate[],
  { p: mine, q: other, line, valley, shut }: ModelHinge,
  p: number,
  q: number,
  findings: Finding[],
): Link[] {
  const [a, b] = [plates[p], plates[q]]
  if (!a || !b) return []
  const [sideP, sideQ] = [mine, other].map((i) => sideOf(model.plates[i]?.rings ?? [], line))
  if (!sideP || sideQ !== -sideP) {
    findings.push({
      rule: 'crease-off-edge',
      severity: 'error',
      message: `The crease between ${sayNames([mine, other].map((i) => model.plates[i]?.name ?? ''))} does not lie on an edge that the two share`,
      suggestion: 'Put the crease where the two panels meet',
    })
    return []
  }
  const ends = ({ map }: BodyPlate): [Whole, Whole] => [apply(map, line[0]), apply(map, line[1])]
  // A plate on the left of the line is lifted by a left-handed turn of the other side. Turning a plate over in its body
  // swaps its left and right, and its front and back with them, so the turn stays the same.
  return [
    {
      p,
      q,
      a: a.body,
      b: b.body,
      lineA: ends(a),
      lineB: ends(b),
      over: a.over !== b.over,
      bend: valley ? -sideP : sideP,
      valley,
      shut,
    },
  ]
}

/** On which side of a line a plate lies, looking along the line: 1 left, -1 right, 0 both or neither. */
function sideOf(rings: readonly (readonly Whole[])[], [[x0, y0], [x1, y1]]: readonly [Whole, Whole]): number {
  const half = 0.5 / (Math.hypot(x1 - x0, y1 - y0) || 1)
  const [x, y, dx, dy] = [(x0 + x1) / 2, (y0 + y1) / 2, (y0 - y1) * half, (x1 - x0) * half]
  return Number(covers(rings, x + dx, y + dy)) - Number(covers(rings, x - dx, y - dy))
}

/** Whether (u, v) is inside, by counting edges to its right. */
export function covers(rings: readonly (readonly Whole[])[], u: number, v: number): boolean {
  let inside = false
  for (const ring of rings)
    for (const [i, [u1, v1]] of ring.entries()) {
      const [u0, v0] = ring.at(i - 1) ?? [u1, v1]
      if (v0 > v !== v1 > v && u < u0 + ((v - v0) / (v1 - v0)) * (u1 - u0)) inside = !inside
    }
  return inside
}
