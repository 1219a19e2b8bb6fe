import type { Finding } from '../length/finding.ts'
import { apply, type Whole } from './affine.ts'
import type { Model, ModelHinge } from './model.ts'
import { sayLength, sayNames } from './say.ts'
import type { Link, SectionPlate } from './section.ts'

/**
 * Reads each hinge as a pin between two bodies of the section.
 *
 * @returns undefined, with findings, when a crease does not lie on the edge of both plates, or is not where both
 * bodies have it.
 */
export function linksOf(
  model: Model,
  norm: number,
  plates: readonly SectionPlate[],
  findings: Finding[],
): Link[] | undefined {
  const numbers = new Map(plates.map(({ index }, i) => [index, i]))
  const before = findings.length
  const links = model.hinges.flatMap((hinge): Link[] => {
    const [p, q] = [numbers.get(hinge.p), numbers.get(hinge.q)]
    if (p === undefined || q === undefined) return []
    return linkOf(model, norm, plates, hinge, p, q, findings)
  })
  return findings.length === before ? links : undefined
}

function linkOf(
  model: Model,
  norm: number,
  plates: readonly SectionPlate[],
  hinge: ModelHinge,
  p: number,
  q: number,
  findings: Finding[],
): Link[] {
  const [a, b] = [plates[p], plates[q]]
  if (!a || !b) return []
  const names = sayNames([hinge.p, hinge.q].map((i) => model.plates[i]?.name ?? ''))
  const [fromA, toA] = hinge.line.map((point) => apply(a.map, point)) as [Whole, Whole]
  const [fromB, toB] = hinge.line.map((point) => apply(b.map, point)) as [Whole, Whole]
  if (fromA[0] !== toA[0] || fromB[0] !== toB[0]) {
    findings.push(notParallel([hinge.p, hinge.q].map((i) => model.plates[i]?.name ?? '')))
    return []
  }
  if (fromA[1] !== fromB[1] || toA[1] !== toB[1]) {
    const by = sayLength(Math.round(Math.abs(fromA[1] - fromB[1]) / Math.sqrt(norm)), model.perMm)
    const twisted = Math.sign(toA[1] - fromA[1]) !== Math.sign(toB[1] - fromB[1])
    findings.push({
      rule: 'bond-mismatch',
      severity: 'error',
      message: twisted
        ? `What is stuck together twists the crease between ${names}`
        : `What is stuck together holds the two sides of the crease between ${names} ${by} apart along the crease`,
      suggestion: twisted
        ? 'Turn one of the pieces that are stuck on'
        : `Move one of the pieces that are stuck on by ${by} along the creases`,
    })
    return []
  }
  const [from, to] = [Math.min(fromA[1], toA[1]), Math.max(fromA[1], toA[1])]
  const [sideP, sideQ] = [sideOf(a, fromA[0], from, to), sideOf(b, fromB[0], from, to)]
  // Seen from its own face, a plate that is turned over lies on the other side.
  const [ownP, ownQ] = [a.over ? -sideP : sideP, b.over ? -sideQ : sideQ]
  if (sideP === 0 || ownQ !== -ownP) {
    findings.push({
      rule: 'crease-off-edge',
      severity: 'error',
      message: `The crease between ${names} does not lie on an edge that the two share`,
      suggestion: 'Put the crease where the two panels meet',
    })
    return []
  }
  return [
    {
      p,
      q,
      a: a.body,
      b: b.body,
      ua: fromA[0],
      ub: fromB[0],
      from,
      to,
      over: a.over !== b.over,
      bend: hinge.valley ? -ownP : ownP,
      valley: hinge.valley,
    },
  ]
}

/** Slanted creases want more than a section. That is a gap in the proof and no fault of the card. */
export function notParallel(names: readonly string[]): Finding {
  return {
    rule: 'not-parallel',
    severity: 'warning',
    message: `The crease between ${sayNames(names)} is not parallel to the others, so how this card folds is not checked`,
    suggestion: 'Fold a sample before the class, and compare its closed size',
  }
}

/** On which side of the line at `u` the plate lies: 1 towards larger u, -1 towards smaller, 0 both or neither. */
function sideOf({ rings }: SectionPlate, u: number, from: number, to: number): number {
  const v = (from + to) / 2
  return Number(covers(rings, u + 0.5, v)) - Number(covers(rings, u - 0.5, v))
}

/** Whether (u, v) is inside, by counting edges to its right. */
function covers(rings: readonly (readonly Whole[])[], u: number, v: number): boolean {
  let inside = false
  for (const ring of rings)
    for (const [i, [u1, v1]] of ring.entries()) {
      const [u0, v0] = ring.at(i - 1) ?? [u1, v1]
      if (v0 > v !== v1 > v && u < u0 + ((v - v0) / (v1 - v0)) * (u1 - u0)) inside = !inside
    }
  return inside
}
