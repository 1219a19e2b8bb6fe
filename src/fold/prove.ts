import type { Structure } from '../card/structure.ts'
import type { Finding } from '../length/finding.ts'
import { once } from '../length/once.ts'
import { type Assembly, assemblyOf } from './assembly.ts'
import { type Bodies, bodiesOf } from './bodies.ts'
import { boxOf, isBox } from './box.ts'
import { growthOf } from './growth.ts'
import { linkageOf } from './joints.ts'
import { makingOf } from './making.ts'
import { type Model, modelOf } from './model.ts'
import { motionOf } from './motion.ts'
import { crossingsWhileOpening } from './movement.ts'
import type { Closed, Making, Proof } from './pose.ts'
import { type Rings, ringsOf } from './rings.ts'
import { sectionOf } from './section.ts'
import type { Sheet } from './sheet.ts'
import { shutInSpace, shutSection } from './shut.ts'
import { closedOf } from './shut-pose.ts'
import { standingOf } from './standing.ts'
import { unfoldingOf } from './unfolding.ts'

/**
 * Folds a card: whether and how it shuts, in which order its layers lie, how thick it gets, how it stands and how it
 * gets there. Works on any plates, creases and bonds, and knows nothing of fold styles. Plates that no crease or bond
 * joins to others take no part; of several things that do not hang together, all are proven, and the one with the plate
 * that stays put is shown.
 *
 * @returns a proof whose findings have no places yet: a structure does not know the file it came from.
 */
export function foldCard(structure: Structure): Proof {
  const findings: Finding[] = []
  const main = mainOf(structure, findings)
  if (!main)
    return {
      freedom: 0,
      between: () => undefined,
      folding: () => undefined,
      making: () => undefined,
      findings,
    }
  const { assembly, rings, folds, closed, unfolding } = main
  const motion = motionOf(assembly, rings, folds, structure.display, findings, unfolding)
  findings.push(...crossingsWhileOpening(assembly, motion))
  const folding = (): [string, string][] | undefined =>
    unfolding()
      ?.map((link) => namesAt(assembly, link))
      .reverse()
  const laid = closed()
  const standing = standingOf(assembly, motion, structure.display, laid, folds)
  const making = once((): Making | undefined =>
    makingOf(
      structure,
      { assembly, folds, motion, closed: laid, poseBetween: standing.between, folding: folding() },
      sheetOf,
    ),
  )
  return { closed: laid, ...standing, folding, making, findings }
}

/** A sheet that lies flat; undefined when its plates do not hang together as they should. */
function sheetOf(structure: Structure): Sheet | undefined {
  const findings: Finding[] = []
  const model = modelOf(structure, findings)
  const assembly = model && spread(model, bodiesOf(model, findings), model.shown, findings)
  if (!assembly || findings.length > 0) return undefined
  const rings = ringsOf(assembly.bodies, assembly.links)
  return {
    assembly,
    rings,
    linkage: linkageOf(
      assembly,
      rings,
      assembly.links.map(() => 0),
    ),
  }
}

/** How a card lies shut, without how it gets there; undefined when it does not shut. */
export const shutCard = (structure: Structure): Closed | undefined => mainOf(structure, [])?.closed()

/** Shuts everything that hangs together, and gives what hangs together with the plate that stays put. */
function mainOf(structure: Structure, findings: Finding[]): Shutting | undefined {
  const model = modelOf(structure, findings)
  if (!model) return undefined
  const bodies = bodiesOf(model, findings)
  if (findings.some(({ severity }) => severity === 'error')) return undefined
  for (const root of otherRoots(model, bodies)) shut(model, bodies, root, findings)
  return shut(model, bodies, model.shown, findings)
}

function namesAt({ links, plates, model }: Assembly, link: number): [string, string] {
  const { p, q } = links[link] ?? { p: 0, q: 0 }
  const nameOf = (i: number): string => model.plates[plates[i]?.index ?? 0]?.name ?? ''
  return [nameOf(p), nameOf(q)]
}

interface Shutting {
  readonly assembly: Assembly
  readonly rings: Rings
  /** Of the links, in radians. */
  readonly folds: readonly number[]
  readonly closed: () => Closed
  /** Links in the order in which a hand opens them. */
  readonly unfolding: () => readonly number[] | undefined
}

/**
 * Shuts what hangs together with plate `root`. Parallel creases are proven exactly, in section; others in the plane, by
 * reflection; boxes in space.
 */
function shut(model: Model, bodies: Bodies, root: number, findings: Finding[]): Shutting | undefined {
  const before = findings.length
  const section = sectionOf(model, bodies, root, findings)
  if (findings.length > before) return undefined
  const assembly = section ?? spread(model, bodies, root, findings)
  if (!assembly) return undefined
  const rings = ringsOf(assembly.bodies, assembly.links)
  if (isBox(assembly)) {
    const box = boxOf(assembly, rings, findings)
    return box && { assembly, rings, ...box, unfolding: () => undefined }
  }
  const found = section ? shutSection(section, rings, findings) : shutInSpace(assembly, rings, findings)
  const folds = found?.layout.closing.folded.map((folded) => (folded ? Math.PI : 0))
  if (!found || !folds) return undefined
  return { assembly, rings, folds, closed: () => closedOf(found), unfolding: () => unfoldingOf(found, rings) }
}

/** The bodies as they are, each in its own flat coordinates. */
function spread(model: Model, bodies: Bodies, root: number, findings: Finding[]): Assembly | undefined {
  const bodyOf = (plate: number): number => bodies.of[plate] ?? 0
  const order = [bodyOf(root), ...growthOf(model, bodies, root).map(({ here }) => bodyOf(here))]
  return assemblyOf(model, bodies, order, new Map(), findings)
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
