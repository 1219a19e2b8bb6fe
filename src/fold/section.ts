import type { Finding } from '../length/finding.ts'
import { type Affine, after, apply, applyLinear, identity, type Whole } from './affine.ts'
import { type Assembly, assemblyOf, type Link } from './assembly.ts'
import type { Bodies } from './bodies.ts'
import { growthOf } from './growth.ts'
import { type Model, tooFine } from './model.ts'
import { sayLength, sayNames } from './say.ts'
import { largestCount, primitive } from './whole.ts'

/**
 * A card seen along its creases: every body has coordinates u, across the creases, and v, along them; all share v, and
 * all are whole numbers. `norm` is 1 unless the creases are slanted.
 */
export type Section = Assembly

/**
 * Lays the bodies that hang together with plate `root` out in one section.
 *
 * @returns undefined, with findings, when bonds shift creases along each other; without, when creases are not parallel.
 */
export function sectionOf(
  model: Model,
  bodies: Bodies,
  root: number,
  findings: Finding[],
): Section | undefined {
  // Slanting bonds have no whole numbers.
  if (model.bonds.some(({ map }) => !Number.isInteger(map.a))) return undefined
  const frames = new Map<number, Affine>()
  const bodyOf = (plate: number): number => bodies.of[plate] ?? 0
  const lift = (plate: number): Affine =>
    after(frames.get(bodyOf(plate)) ?? identity, bodies.maps[plate] ?? identity)
  const steps = growthOf(model, bodies, root)
  const [first] = steps
  frames.set(bodyOf(root), first ? frameAlong(bodies, first.there, first.line, 1) : identity)
  for (const { there, here, line } of steps) {
    const along = directionOf(lift(there), line)
    if (along[0] !== 0) return undefined
    const frame = frameAlong(bodies, here, line, Math.sign(along[1]))
    const gap =
      apply(lift(there), line[0])[1] - apply(after(frame, bodies.maps[here] ?? identity), line[0])[1]
    frames.set(bodyOf(here), { ...frame, f: frame.f + gap })
  }

  const section = assemblyOf(model, bodies, [...frames.keys()], frames, findings)
  if (!section?.links.every(({ lineA, lineB }) => isAlong(lineA) && isAlong(lineB))) return undefined
  // Slanted creases make large numbers.
  if (section.plates.some(({ rings }) => rings.flat(2).some((x) => Math.abs(x) > 64 * largestCount))) {
    findings.push(tooFine)
    return undefined
  }
  const shifts = section.links.flatMap((link) => shiftOf(section, link))
  findings.push(...shifts)
  return shifts.length > 0 ? undefined : section
}

const isAlong = ([from, to]: Link['lineA']): boolean => from[0] === to[0]

/** Bonds may hold the two sides of a crease apart along it. */
function shiftOf({ model, plates, norm }: Section, { p, q, lineA, lineB }: Link): Finding[] {
  const [fromA, toA, fromB, toB] = [...lineA, ...lineB].map(([, v]) => v) as [number, number, number, number]
  if (fromA === fromB && toA === toB) return []
  const names = sayNames([p, q].map((i) => model.plates[plates[i]?.index ?? 0]?.name ?? ''))
  const by = sayLength(Math.round(Math.abs(fromA - fromB) / Math.sqrt(norm)), model.perMm)
  const twisted = Math.sign(toA - fromA) !== Math.sign(toB - fromB)
  return [
    {
      rule: 'bond-mismatch',
      severity: 'error',
      message: twisted
        ? `What is stuck together twists the crease between ${names}`
        : `What is stuck together holds the two sides of the crease between ${names} ${by} apart along the crease`,
      suggestion: twisted
        ? 'Turn one of the pieces that are stuck on'
        : `Move one of the pieces that are stuck on by ${by} along the creases`,
    },
  ]
}

const directionOf = (map: Affine, [from, to]: readonly [Whole, Whole]): Whole =>
  applyLinear(map, [to[0] - from[0], to[1] - from[1]])

/** The frame of a body whose v runs along a crease of plate `plate`, or against it. */
function frameAlong(bodies: Bodies, plate: number, line: readonly [Whole, Whole], sign: number): Affine {
  const [x, y] = directionOf(bodies.maps[plate] ?? identity, line)
  const [a, b] = primitive(sign * x, sign * y)
  return { a: b, b: -a, c: a, d: b, e: 0, f: 0 }
}
