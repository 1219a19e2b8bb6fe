import type { Display } from '../card/structure.ts'
import type { Finding } from '../length/finding.ts'
import { apply } from './affine.ts'
import type { Linkage, Rest } from './linkage.ts'
import { notParallel } from './links.ts'
import type { Drives } from './opening.ts'
import type { Reaches } from './resting.ts'
import type { Rings } from './rings.ts'
import { sayNames } from './say.ts'
import type { Section } from './section.ts'
import type { Shut } from './shut.ts'

/** Millimetres of a section's u as a number to multiply with. */
export const mmOf = ({ model, norm }: Section): number => 1 / (Number(model.perMm) * Math.sqrt(norm))

/** The section as bars and pins, in mm. */
export function linkageOf(section: Section, rings: Rings, rests: readonly Rest[]): Linkage {
  const { bodies, links } = section
  const mm = mmOf(section)
  const tree = new Set(rings.reached.map((step) => step?.link))
  const us = links.flatMap(({ ua, ub }) => [ua * mm, ub * mm])
  return {
    bars: bodies,
    joints: links.map(({ a, b, ua, ub, over, bend }) => ({
      a,
      b,
      ua: ua * mm,
      ub: ub * mm,
      base: over ? Math.PI : 0,
      bend,
    })),
    reached: rings.reached,
    closing: links.flatMap((_, i) => (tree.has(i) ? [] : [i])),
    rests,
    scale: Math.max(1, Math.max(...us) - Math.min(...us)),
  }
}

/** The stops as points that come to lie on other bars: where they would touch while shut, and where standing. */
export function restsOf({ layout }: Shut, findings: Finding[]): { rests: Rest[]; reaches: Reaches } {
  const { section, closing } = layout
  const { model, plates } = section
  const mm = mmOf(section)
  const found = model.stops.flatMap(({ plate, edge, onto, line }) => {
    const [a, b] = [plate, onto].map((i) => plates.find(({ index }) => index === i))
    if (!a || !b || a.body === b.body) return []
    const [ua, endA] = edge.map((point) => apply(a.map, point)[0])
    const [ub, endB] = line.map((point) => apply(b.map, point)[0])
    if (ua === undefined || ub === undefined || ua !== endA || ub !== endB) {
      findings.push(notParallel([plate, onto].map((i) => model.plates[i]?.name ?? '')))
      return []
    }
    const [sign, turned] = [closing.direction[a.body] ?? 1, closing.direction[b.body] ?? 1]
    const laid = (closing.offset[a.body] ?? 0) + sign * ua
    const from = turned * (laid - (closing.offset[b.body] ?? 0))
    return [{ rest: { a: a.body, ua: ua * mm, b: b.body }, reach: { from: from * mm, to: ub * mm } }]
  })
  return { rests: found.map(({ rest }) => rest), reaches: found.map(({ reach }) => reach) }
}

/** The joints that the display leads, with their fold angles in radians. */
export function drivesOf({ links, plates, model }: Section, display: Display, findings: Finding[]): Drives {
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
