import type { Structure } from '../card/structure.ts'
import type { Finding } from '../length/finding.ts'
import { type Bodies, bodiesOf } from './bodies.ts'
import { type Model, modelOf } from './model.ts'
import { motionOf } from './motion.ts'
import type { Proof } from './pose.ts'
import { ringsOf } from './rings.ts'
import { sectionOf } from './section.ts'
import { type Shut, shutOf } from './shut.ts'
import { closedOf } from './shut-pose.ts'
import { standingOf } from './standing.ts'

/**
 * Folds a card: whether and how it shuts, in which order its layers lie, how thick it gets, how it stands and how it
 * gets there. Works on any plates whose creases are parallel, and knows nothing of fold styles. Plates that no crease or
 * bond joins to others take no part; of several things that do not hang together, all are proven, and the one with the
 * plate that stays put is shown.
 *
 * @returns a proof whose findings have no places yet: a structure does not know the file it came from.
 */
export function foldCard(structure: Structure): Proof {
  const findings: Finding[] = []
  const nothing = { freedom: 0, between: () => undefined, findings }
  const model = modelOf(structure, findings)
  if (!model) return nothing
  const bodies = bodiesOf(model, findings)
  if (findings.some(({ severity }) => severity === 'error')) return nothing
  for (const root of otherRoots(model, bodies)) shut(model, bodies, root, findings)
  const main = shut(model, bodies, model.shown, findings)
  if (!main) return nothing
  const motion = motionOf(main.shut, main.rings, structure.display, findings)
  return { closed: closedOf(main.shut), ...standingOf(main.shut, motion, structure.display), findings }
}

function shut(model: Model, bodies: Bodies, root: number, findings: Finding[]) {
  const section = sectionOf(model, bodies, root, findings)
  const rings = section && ringsOf(section.bodies, section.links)
  const found: Shut | undefined = section && rings && shutOf(section, rings, findings)
  return found && rings && { shut: found, rings }
}

/** A plate of each thing that has creases and does not hang together with the plate that stays put. */
function otherRoots({ hinges, shown }: Model, { of }: Bodies): number[] {
  const groups = new Map<number, number>()
  const top = (body: number): number => {
    const next = groups.get(body) ?? body
    return next === body ? body : top(next)
  }
  for (const { p, q } of hinges) groups.set(top(of[p] ?? 0), top(of[q] ?? 0))
  const seen = new Set([top(of[shown] ?? 0)])
  return hinges.flatMap(({ p }) => {
    const group = top(of[p] ?? 0)
    if (seen.has(group)) return []
    seen.add(group)
    return [p]
  })
}
