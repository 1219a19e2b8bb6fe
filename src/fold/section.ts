import type { Finding } from '../length/finding.ts'
import { type Affine, after, apply, applyLinear, determinant, identity, type Whole } from './affine.ts'
import type { Bodies } from './bodies.ts'
import { linksOf, notParallel } from './links.ts'
import { type Model, tooFine } from './model.ts'
import { largestCount, primitive } from './whole.ts'

/**
 * The card seen along its creases. Every body has coordinates u, across the creases, and v, along them; all share v.
 * Both count in units of 1/`perMm` mm times √`norm`, which is 1 unless the creases are slanted.
 */
export interface Section {
  readonly model: Model
  /** The body of the plate that stays put is the first. */
  readonly bodies: number
  readonly plates: readonly SectionPlate[]
  /** Hinges between bodies. */
  readonly links: readonly Link[]
  /** Hinges that bonds hold shut, within a body. */
  readonly hems: readonly Link[]
  readonly norm: number
}

export interface SectionPlate {
  /** Its place in the model. */
  readonly index: number
  readonly body: number
  /** Its place in its body, counted from the back. */
  readonly level: number
  /** Whether its face looks to the back of its body. */
  readonly over: boolean
  /** From its piece to (u, v). */
  readonly map: Affine
  readonly rings: readonly (readonly Whole[])[]
}

/** A hinge: points `ua` of body `a` and `ub` of body `b` coincide, all along `from`..`to`. */
export interface Link {
  /** The two plates, by their place in the section. */
  readonly p: number
  readonly q: number
  readonly a: number
  readonly b: number
  readonly ua: number
  readonly ub: number
  readonly from: number
  readonly to: number
  /** Whether only one of the plates lies turned over in its body. */
  readonly over: boolean
  /** Turn of `q` against `p` about v when the crease bends: 1 counter-clockwise (from u to the front), or -1. */
  readonly bend: number
  readonly valley: boolean
}

/**
 * Lays the bodies that hang together with plate `root` out in one section.
 *
 * @returns undefined, with findings, when creases are not parallel or bonds shift them along each other.
 */
export function sectionOf(
  model: Model,
  bodies: Bodies,
  root: number,
  findings: Finding[],
): Section | undefined {
  const hinges = model.hinges.filter(({ p, q }) => bodies.of[p] !== bodies.of[q])
  const frames = new Map<number, Affine>()
  const order: number[] = []
  const bodyOf = (plate: number): number => bodies.of[plate] ?? 0
  const lift = (plate: number): Affine =>
    after(frames.get(bodyOf(plate)) ?? identity, bodies.maps[plate] ?? identity)
  const add = (body: number, frame: Affine): void => {
    frames.set(body, frame)
    order.push(body)
  }
  const first = hinges.find(({ p, q }) => bodyOf(p) === bodyOf(root) || bodyOf(q) === bodyOf(root))
  const inRoot = first && bodyOf(first.p) === bodyOf(root) ? first.p : first?.q
  add(bodyOf(root), first && inRoot !== undefined ? frameAlong(bodies, inRoot, first.line, 1) : identity)

  for (;;) {
    // The body with most creases to those that are there already: rings are closed as early as can be.
    const open = hinges.filter(({ p, q }) => frames.has(bodyOf(p)) !== frames.has(bodyOf(q)))
    const next = open.map(({ p, q }) => (frames.has(bodyOf(p)) ? bodyOf(q) : bodyOf(p)))
    const most = next.reduce((a, b) => (count(next, b) > count(next, a) ? b : a), next[0] ?? -1)
    const hinge = open.find(({ p, q }) => bodyOf(p) === most || bodyOf(q) === most)
    if (!hinge) break
    const [there, here] = frames.has(bodyOf(hinge.p)) ? [hinge.p, hinge.q] : [hinge.q, hinge.p]
    const along = directionOf(lift(there), hinge.line)
    if (along[0] !== 0) {
      findings.push(notParallel([there, here].map((i) => model.plates[i]?.name ?? '')))
      return undefined
    }
    const frame = frameAlong(bodies, here, hinge.line, Math.sign(along[1]))
    const [start] = hinge.line
    const gap = apply(lift(there), start)[1] - apply(after(frame, bodies.maps[here] ?? identity), start)[1]
    add(bodyOf(here), { ...frame, f: frame.f + gap })
  }

  const numbers = new Map(order.map((body, i) => [body, i]))
  const parts = order.flatMap((body) => bodies.stacks[body] ?? []).sort((a, b) => a - b)
  const plates = parts.map((index): SectionPlate => {
    const map = lift(index)
    return {
      index,
      body: numbers.get(bodyOf(index)) ?? 0,
      level: (bodies.stacks[bodyOf(index)] ?? []).indexOf(index),
      over: determinant(map) < 0,
      map,
      rings: (model.plates[index]?.rings ?? []).map((ring) => ring.map((point) => apply(map, point))),
    }
  })
  // Slanted creases make large numbers.
  if (plates.some(({ rings }) => rings.flat(2).some((x) => Math.abs(x) > 64 * largestCount))) {
    findings.push(tooFine)
    return undefined
  }
  const norm = Math.abs(determinant(frames.get(bodyOf(root)) ?? identity))
  const links = linksOf(model, norm, plates, findings)
  return (
    links && {
      model,
      bodies: order.length,
      plates,
      links: links.filter(({ a, b }) => a !== b),
      hems: links.filter(({ a, b }) => a === b),
      norm,
    }
  )
}

const count = (all: readonly number[], one: number): number => all.filter((x) => x === one).length

const directionOf = (map: Affine, [from, to]: readonly [Whole, Whole]): Whole =>
  applyLinear(map, [to[0] - from[0], to[1] - from[1]])

/** The frame of a body whose v runs along a crease of plate `plate`, or against it. */
function frameAlong(bodies: Bodies, plate: number, line: readonly [Whole, Whole], sign: number): Affine {
  const [x, y] = directionOf(bodies.maps[plate] ?? identity, line)
  const [a, b] = primitive(sign * x, sign * y)
  return { a: b, b: -a, c: a, d: b, e: 0, f: 0 }
}
