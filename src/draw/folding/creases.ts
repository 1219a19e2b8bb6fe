import type { Fold, Hinge } from '../../card/structure.ts'
import { project } from '../camera.ts'
import { mix2 } from '../clip.ts'
import type { Corner, Face } from '../face/face.ts'
import { colours, dashes, weights } from '../ink.ts'
import { line, type Mark } from '../mark.ts'
import type { Spot } from '../num.ts'
import { flatLine } from '../plane.ts'
import { dot, inSpace, less } from '../space.ts'
import { bendsIn, bentBy, length } from './moves.ts'
import { type Picture, seenAt } from './seen.ts'
import type { Stage } from './stages.ts'
import type { Way } from './way.ts'

/** A part of a crease that is seen and is not folded yet, or is being folded; in mm of the card, y downwards. */
export interface CreaseLine {
  readonly ends: readonly [Spot, Spot]
  /** As it is seen from this side: a valley of the face is a mountain of the back. */
  readonly fold: Fold
  /** Whether it is being folded. */
  readonly isActive: boolean
  /** Whether the sheet turns away there, so that it is an edge of the picture. */
  readonly isEdge: boolean
}

/** Creases bent by less than this, in degrees, lie flat. */
const flat = 2

interface Drawn {
  readonly hinge: Hinge
  readonly isActive: boolean
}

/** The creases that a stage draws with dashes: those that still lie flat, and those that are being folded. */
function drawnCreases({ structure, acts }: Way, stage: Stage): Drawn[] {
  return structure.hinges.flatMap((hinge) => {
    const { between } = hinge
    if (!between.every((name) => stage.pose.has(name))) return []
    if (stage.kind === 'shut' || stage.kind === 'standing') return []
    const isActive = bendsIn(stage.acts, between)
    const waits = bentBy(stage.pose, between) < flat && bendsIn(acts, between)
    return isActive || waits ? [{ hinge, isActive }] : []
  })
}

/** The faces without the edges that are drawn as creases, and those creases. */
export function withCreases(way: Way, stage: Stage): { faces: Face[]; creases: CreaseLine[] } {
  const drawn = drawnCreases(way, stage)
  return {
    faces: stage.picture.faces.map((face) => without(face, drawn)),
    creases: drawn.flatMap((one) => creaseLines(stage.picture, one)),
  }
}

function without(face: Face, drawn: readonly Drawn[]): Face {
  const own = drawn
    .filter(({ hinge }) => hinge.between.includes(face.plate.name))
    .map(({ hinge }) => flatLine(hinge.line).map((p) => inSpace(face.place, p)))
  if (own.length === 0) return face
  const outline = face.outline.map((corner, i): Corner => {
    const next = face.outline[(i + 1) % face.outline.length]?.at ?? corner.at
    const isOn = own.some(([a, b]) => a && b && [corner.at, next].every((p) => isBetween(p, a, b)))
    return corner.edge === 'crease' && isOn ? { ...corner, edge: 'split' } : corner
  })
  return { ...face, outline }
}

const isBetween = (p: Corner['at'], a: Corner['at'], b: Corner['at']): boolean =>
  Math.abs(length(less(p, a)) + length(less(b, p)) - length(less(b, a))) < 1e-3

/** How finely it is looked for where a crease goes behind something. */
const steps = 80

/** The parts of a crease that nothing hides, as it is seen from the nearer of its panels. */
function creaseLines(picture: Picture, { hinge, isActive }: Drawn): CreaseLine[] {
  const { camera, faces } = picture
  const own = faces.flatMap((face, i) => (hinge.between.includes(face.plate.name) ? [{ face, i }] : []))
  const first = own[0]?.face
  if (!first) return []
  const [from, to] = flatLine(hinge.line).map((p) => project(camera, inSpace(first.place, p), 1)) as [
    Spot,
    Spot,
  ]
  const top = Math.max(...own.map(({ i }) => i))
  const looks = own.map(({ face }) => dot(face.place.normal, camera.eye))
  const most = looks.reduce((all, look) => (Math.abs(look) > Math.abs(all) ? look : all), 0)
  const fold: Fold = most >= 0 ? hinge.fold : hinge.fold === 'valley' ? 'mountain' : 'valley'
  const isEdge = looks.some((look) => look > 0) && looks.some((look) => look < 0)
  const parts: [Spot, Spot][] = []
  let start: number | undefined
  for (let i = 0; i <= steps; i++) {
    const isSeen = i < steps && seenAt(picture, mix2(from, to, (i + 0.5) / steps), top) < 0
    if (isSeen && start === undefined) start = i
    if (!isSeen && start !== undefined) {
      parts.push([mix2(from, to, start / steps), mix2(from, to, i / steps)])
      start = undefined
    }
  }
  return parts.map((ends) => ({ ends, fold, isActive, isEdge }))
}

/** A crease where it goes on the page: dashed, and rust and heavier while it is folded; whole where it is an edge of the picture. */
export function creaseMark(
  { ends: [from, to], fold, isActive, isEdge }: CreaseLine,
  place: (spot: Spot) => Spot,
): Mark {
  return line(place(from), place(to), {
    class: `crease ${fold}${isActive ? ' active' : ''}`,
    width: isActive ? 0.6 : weights.crease,
    colour: isActive ? colours.rust : colours.ink,
    ...(isEdge ? { cap: 'round' as const } : { dash: dashes[fold] }),
  })
}
