import type { Display } from '../card/structure.ts'
import type { Finding } from '../length/finding.ts'
import { apply, type Whole } from './affine.ts'
import type { Assembly, BodyPlate, Link } from './assembly.ts'
import {
  framesAt,
  type Hinge,
  type Joint,
  type Level,
  type Linkage,
  type Rest,
  type Spot,
} from './linkage.ts'
import type { Drives } from './opening.ts'
import type { Placement } from './pose.ts'
import type { Rings } from './rings.ts'
import { sayNames } from './say.ts'
import { atHome, dot, spotAt, sum } from './space.ts'

/** Millimetres of an assembly's units as a number to multiply with. */
export const mmOf = ({ model, norm }: Assembly): number => 1 / (Number(model.perMm) * Math.sqrt(norm))

/** The assembly as rigid bodies with joints, in mm. Stops become rests between where they are at `shut` and their line. */
export function linkageOf(assembly: Assembly, rings: Rings, shut: readonly number[]): Linkage {
  const { bodies, links, plates } = assembly
  const mm = mmOf(assembly)
  const tree = new Set(rings.reached.map((step) => step?.link))
  const xs = plates.flatMap(({ rings: all }) => all.flat(2)).map((x) => x * mm)
  const linkage = {
    bodies,
    joints: links.map((link) => jointOf(link, mm)),
    reached: rings.reached,
    closing: links.flatMap((_, i) => (tree.has(i) ? [] : [i])),
    rests: [],
    scale: Math.max(1, Math.max(...xs) - Math.min(...xs)),
  }
  return { ...linkage, rests: restsOf(assembly, framesAt(linkage, shut), mm) }
}

const jointOf = ({ a, b, lineA, lineB, over, bend }: Link, mm: number): Joint => ({
  a,
  b,
  lineA: hingeOf(lineA, mm),
  lineB: hingeOf(lineB, mm),
  base: over ? Math.PI : 0,
  bend,
})

function hingeOf([[x0, y0], [x1, y1]]: Link['lineA'], mm: number): Hinge {
  const length = Math.hypot(x1 - x0, y1 - y0)
  return { at: [x0 * mm, y0 * mm], way: [(x1 - x0) / length, (y1 - y0) / length] }
}

function restsOf({ model, plates }: Assembly, shut: readonly Placement[], mm: number): Rest[] {
  return model.stops.flatMap(({ plate, edge, onto, line }): Rest[] => {
    const [a, b] = [plate, onto].map((i) => plates.find(({ index }) => index === i))
    if (!a || !b || a.body === b.body) return []
    const ends = (of: BodyPlate, points: readonly [Whole, Whole]): [Spot, Spot] => {
      const [from, to] = points.map((point) => apply(of.map, point)) as [Whole, Whole]
      return [
        [from[0] * mm, from[1] * mm],
        [to[0] * mm, to[1] * mm],
      ]
    }
    const [mine, theirs] = [ends(a, edge), ends(b, line)]
    const [there, here] = [shut[a.body] ?? atHome, shut[b.body] ?? atHome]
    const laid = mine.map(([x, y]): Spot => {
      const way = sum(spotAt(there, x, y), here.origin, -1)
      return [dot(way, here.right), dot(way, here.up)]
    }) as [Spot, Spot]
    return [{ a: a.body, edge: mine, b: b.body, lineAt: turning(laid, theirs) }]
  })
}

/** Lines between two: moved, if the two are parallel, and else turned about where they cross. */
function turning(from: readonly [Spot, Spot], to: readonly [Spot, Spot]): (share: number) => Level {
  const angleOf = ([[x0, y0], [x1, y1]]: readonly [Spot, Spot]): number => Math.atan2(x0 - x1, y1 - y0)
  const start = angleOf(from)
  // The same line either way round.
  const by = angleOf(to) - start
  const turn = by - Math.PI * Math.round(by / Math.PI)
  const levelOf = (angle: number, [x, y]: Spot): Level => {
    const [nx, ny] = [Math.cos(angle), Math.sin(angle)]
    return { nx, ny, c: nx * x + ny * y }
  }
  const [one, other] = [levelOf(start, from[0]), levelOf(start + turn, to[0])]
  if (Math.abs(turn) < 1e-9) return (share) => ({ ...one, c: one.c + share * (other.c - one.c) })
  const size = one.nx * other.ny - one.ny * other.nx
  const meets: Spot = [
    (one.c * other.ny - other.c * one.ny) / size,
    (one.nx * other.c - other.nx * one.c) / size,
  ]
  return (share) => levelOf(start + share * turn, meets)
}

/** The joints that the display leads, with their fold angles in radians. */
export function drivesOf({ links, plates, model }: Assembly, display: Display, findings: Finding[]): Drives {
  const nameOf = (i: number): string => model.plates[plates[i]?.index ?? 0]?.name ?? ''
  return display.angles.flatMap(({ hinge, degrees }) => {
    const joint = links.findIndex(({ p, q }) => {
      const [one, other] = [nameOf(p), nameOf(q)]
      return (hinge[0] === one && hinge[1] === other) || (hinge[0] === other && hinge[1] === one)
    })
    const valid = joint >= 0 && degrees >= 0 && degrees <= 180
    if (valid) return [{ joint, fold: (degrees * Math.PI) / 180 }]
    findings.push({
      rule: 'does-not-stand',
      severity: 'error',
      message:
        joint < 0
          ? `The card is shown standing by a crease between ${sayNames(hinge)}, but there is none that can fold`
          : `The crease between ${sayNames(hinge)} cannot fold by ${degrees}°`,
      suggestion:
        joint < 0 ? 'Name the two panels of one crease' : 'Choose an angle between 0° (flat) and 180° (shut)',
    })
    return []
  })
}

/** The joints that move when the driven ones do and the rests touch; the others keep what they have when shut. */
export function movingJoints({ groupOf, reached }: Rings, rests: readonly Rest[], drives: Drives): number[] {
  const between = rests.flatMap(({ a, b }) => {
    const [left, right] = [wayTo(reached, a), wayTo(reached, b)]
    return [...left.filter((k) => !right.includes(k)), ...right.filter((k) => !left.includes(k))]
  })
  const first = new Set([...drives.map(({ joint }) => joint), ...between])
  const groups = new Set([...first].map((joint) => groupOf[joint] ?? -1).filter((group) => group >= 0))
  return groupOf.flatMap((group, joint) => (first.has(joint) || groups.has(group) ? [joint] : []))
}

const wayTo = (reached: Rings['reached'], body: number): number[] => {
  const step = reached[body]
  return step ? [...wayTo(reached, step.from), step.link] : []
}
