import type { Structure } from '../../card/structure.ts'
import type { Pose, Vector } from '../../fold/pose.ts'
import { cross, sum } from '../../fold/space.ts'
import type { Camera } from '../camera.ts'
import { type Face, facesOf } from '../face/face.ts'
import { leadOf, type Seen, seenBy } from '../overlap.ts'
import { dot } from '../space.ts'
import type { Hold, Part, Parts, Support } from './parts.ts'

/** Which way a part is lifted and by how many steps, over and above the part that it moves with. */
export interface Lift {
  readonly way: Vector
  readonly steps: number
  readonly with?: Part
  /** What it lies over on its way. */
  readonly over: readonly Part[]
}

/** What stands in the same pose for all lifts. */
export interface Posed {
  readonly structure: Structure
  readonly parts: Parts
  readonly pose: Pose
  /** What stays where it is. */
  readonly still: readonly Part[]
  readonly supports: ReadonlyMap<Part, Support>
}

/** A part before its level is known: parts of one line move the same way from the same ground. */
interface Line {
  readonly part: Part
  readonly way: Vector
  readonly from: Part | undefined
  /** How far it lies that way, in mm, and where its line begins: between two of one beginning it is to be trusted. */
  readonly height: number
  readonly begins: string
  /** Which bond holds it, and which of those between it and the ground is made last. */
  readonly bond: number
  readonly comes: number
  /** It lies as low as the ground, beside it, and holds to it through others. */
  readonly isLow?: boolean
}

/** How far every part that hangs on another is lifted, by what lies under it on its way. */
export function liftsOf(posed: Posed): Map<Part, Lift> {
  const overlap = overlapsOf(posed)
  const lifts = new Map<Line, Lift>()
  const lines = [...linesOf(posed).values()]
  for (const line of lines.map((one) => overFlat(one, lines, posed)).sort(compare)) {
    const under = [...lifts].filter(
      ([other]) =>
        isOneLine(line, other) && (isInside(other, line, posed) || overlap(line.part, other.part, line.way)),
    )
    lifts.set(line, {
      way: line.way,
      steps: line.isLow ? 0 : 1 + Math.max(0, ...under.map(([, { steps }]) => steps)),
      ...(line.from && { with: line.from }),
      over: under.map(([{ part }]) => part),
    })
  }
  return new Map([...lifts].map(([{ part }, lift]) => [part, lift]))
}

/** Whether a flat sheet lies on the panel that a bent one stands on: between two walls nobody would see it. */
const isInside = (flat: Line, bent: Line, { pose }: Posed): boolean =>
  flat.begins === bent.begins && isBent(bent.part, pose) && !isBent(flat.part, pose)

/** A bent sheet comes after all that lies flat on its panel. */
function overFlat(line: Line, lines: readonly Line[], posed: Posed): Line {
  const flat = lines.filter((other) => isOneLine(line, other) && isInside(other, line, posed))
  return { ...line, height: Math.max(line.height, ...flat.map(({ height }) => height + 10 * least)) }
}

function isBent({ plates }: Part, pose: Pose): boolean {
  const [first, ...others] = plates.flatMap((name) => [pose.get(name)?.normal].filter((n) => n !== undefined))
  return first !== undefined && others.some((normal) => Math.abs(dot(normal, first)) < parallel)
}

/** Heights nearer than this, in mm, tell nothing of sheets that lie on different panels. */
const telling = 1

function compare(a: Line, b: Line): number {
  const apart = a.height - b.height
  if (Math.abs(apart) > (a.begins === b.begins || a.comes === b.comes ? 1e-6 : telling)) return apart
  return a.comes - b.comes || a.bond - b.bond
}

const isOneLine = (a: Line, b: Line): boolean => a.from === b.from && dot(a.way, b.way) > parallel
const parallel = 0.99
/** In mm: sheets are thicker. */
const least = 0.02

function linesOf(posed: Posed): Map<Part, Line> {
  const lines = new Map<Part, Line>()
  for (const [part, support] of posed.supports) {
    const at = posed.pose.get(support.own)
    const below = lines.get(support.on)
    const way = wayOf(part, support, posed)
    if (!at || !way) continue
    const bond = support.hold.index
    const comes = Math.max(bond, below?.comes ?? 0)
    // What goes on along the way of what carries it, or back along it, is sorted together with it.
    const joins = below !== undefined && Math.abs(dot(below.way, way)) > parallel
    if (joins) {
      const { way: own, from, begins } = below
      const rigid = posed.pose.get(support.its) && isRigid(support, posed)
      const line = { part, from, begins: rigid ? begins : support.its, bond, comes }
      const base = posed.pose.get(begins)
      const height = dot(at.origin, own)
      const over = from === undefined && base ? height - dot(base.origin, own) : 1
      // Through a slot it comes out on the other side of the ground.
      const through = over < -least
      lines.set(part, {
        ...line,
        way: through ? minus(own) : own,
        height: through ? -height : height,
        isLow: Math.abs(over) <= least,
      })
    } else
      lines.set(part, {
        part,
        way,
        from: posed.still.includes(support.on) ? undefined : support.on,
        height: dot(at.origin, way),
        begins: support.its,
        bond,
        comes,
      })
  }
  return lines
}

/**
 * Whether a stack that lies on a creased sheet would, with the sheet laid flat, lie between it and what the sheet is
 * stuck on: nobody would see what such a card becomes.
 */
export function isTrapped(posed: Posed): boolean {
  const lines = linesOf(posed)
  return [...posed.supports].some(([part, support]) => {
    const [below, way] = [lines.get(support.on), wayOf(part, support, posed)]
    const carries = [...posed.supports.values()].some(({ on }) => on === part)
    return carries && below && way && dot(below.way, way) < -parallel && !isRigid(support, posed)
  })
}

const minus = ([x, y, z]: Vector): Vector => [-x, -y, -z]

/** Whether a part hangs on the same plate of what carries it with which that hangs on the next. */
const isRigid = ({ on, its }: Support, { supports }: Posed): boolean =>
  on.plates.length === 1 || supports.get(on)?.own === its

/**
 * The way off the faces that a part is stuck to. What sits between faces that look at one another goes upwards; what
 * sits on two that do not lie in one plane goes half way between.
 */
function wayOf(part: Part, { on }: Support, { pose, parts }: Posed): Vector | undefined {
  const ways = parts.holds.map((hold) => awayAt(hold, part, on, pose)).filter((way) => way !== undefined)
  const [first] = ways
  if (!first || ways.every((way) => dot(way, first) > parallel)) return first
  const all = ways.reduce((a, b) => sum(a, b))
  const long = Math.hypot(...all)
  return long < ways.length * 0.2 ? [0, 1, 0] : [all[0] / long, all[1] / long, all[2] / long]
}

/** The direction from `on` to `part` where a bond holds them together. */
function awayAt({ bond, part: upper, under }: Hold, part: Part, on: Part, pose: Pose): Vector | undefined {
  const isOn = upper === part && under === on
  if (!isOn && !(upper === on && under === part)) return undefined
  const base = pose.get(bond.onto)
  if (!base) return undefined
  const [x, y, z] = base.normal
  const k = (bond.side === 'face') === isOn ? 1 : -1
  return [k * x, k * y, k * z]
}

/** Tells whether two parts cover one another, seen along a way. */
function overlapsOf({ structure, parts, pose }: Posed): (a: Part, b: Part, way: Vector) => boolean {
  const faces = facesOf(structure, pose)
  const seen = new Map<string, Map<Part, Seen[]>>()
  const alongWay = (way: Vector): { camera: Camera; byPart: Map<Part, Seen[]> } => {
    const camera = cameraAlong(way)
    const key = way.map((n) => n.toFixed(3)).join()
    const byPart = seen.get(key) ?? new Map(parts.all.map((part) => [part, seenOf(part, faces, camera)]))
    seen.set(key, byPart)
    return { camera, byPart }
  }
  return (a, b, way) => {
    const { camera, byPart } = alongWay(way)
    return (byPart.get(a) ?? []).some((one) =>
      (byPart.get(b) ?? []).some((other) => leadOf(one, other, camera) !== undefined),
    )
  }
}

const seenOf = ({ plates }: Part, faces: readonly Face[], camera: Camera): Seen[] =>
  faces.filter(({ plate }) => plates.includes(plate.name)).flatMap((face) => seenBy(camera, face) ?? [])

function cameraAlong(way: Vector): Camera {
  const aside: Vector = Math.abs(way[0]) < 0.9 ? [1, 0, 0] : [0, 1, 0]
  const across = cross(way, aside)
  const long = Math.hypot(...across)
  const up: Vector = [across[0] / long, across[1] / long, across[2] / long]
  return { right: cross(up, way), up, eye: way }
}
