import type { Pose, Vector } from '../../fold/pose.ts'
import { cross } from '../../fold/space.ts'
import { project } from '../camera.ts'
import type { Spot } from '../num.ts'
import { type Flat, flatLine, flatLoop } from '../plane.ts'
import { inSpace, less, mix3 } from '../space.ts'
import { lifted } from './lift.ts'
import { anchorOf, asSeenFrom, isTowards, length, type Move, movesBetween } from './moves.ts'
import { seenAt } from './seen.ts'
import type { Stage } from './stages.ts'
import type { Way } from './way.ts'

/** Where a point of a panel goes, from this stage on. */
export interface Path {
  /** The plate, and the point of it in the frame of its piece. */
  readonly plate: string
  readonly point: Flat
  /** Its places in space. */
  readonly places: readonly Vector[]
  /** The same on the paper, in mm of the card, y downwards. */
  readonly spots: readonly Spot[]
  /** Whether it moves towards the viewer, as a valley does. What is stuck on, does neither. */
  readonly way: 'towards' | 'away' | 'onto'
}

/** So many places of a path are computed. */
const steps = 16

/** More arrows than this tell nobody anything. */
const mostArrows = 4

/** Shorter than this on the paper, as a share of the picture, and an arrow is left out beside a longer one. */
const leastLong = 0.05

/** An edge shows a movement if it goes as far as this share of the farthest. */
const leastShare = 0.6

/** The share of the way up to which the arrows of a stage show what moves. */
export function endOfPath(stage: Stage, next: Stage | undefined): number {
  const end = stage.kind === 'bent' ? (stage.acts.at(-1)?.to ?? stage.at) : 1
  return Math.min(end, next?.at ?? stage.at)
}

/** The ways of what moves from a stage to the next. */
export function pathsFrom(way: Way, stage: Stage, next: Stage | undefined): Path[] {
  if (stage.kind === 'joined') return ontoPath(way, stage)
  if (stage.kind === 'shut' || stage.kind === 'standing' || next?.kind === 'standing') return []
  const until = endOfPath(stage, next)
  const acts = stage.kind === 'bent' ? stage.acts.slice(-1) : (next?.acts ?? [])
  const turn = stage.over ? way.turnOver : (pose: Pose) => pose
  const anchor = anchorOf(way.structure, stage.pose)
  const poses = Array.from({ length: steps + 1 }, (_, i) => {
    const pose = way.poseAt(stage.at + ((until - stage.at) * i) / steps)
    return pose && asSeenFrom(anchor, stage.pose, turn(pose))
  }).filter((pose) => pose !== undefined)
  const [from, to] = [poses[0], poses.at(-1)]
  if (!from || !to || poses.length <= steps) return []
  const moves = movesBetween(way.structure, from, to, acts)
  const paths = moves.flatMap((move) => pathOf(way, stage, move, poses) ?? [])
  const long = Math.max(
    stage.picture.box.right - stage.picture.box.left,
    stage.picture.box.bottom - stage.picture.box.top,
  )
  const sorted = [...paths].sort((a, b) => reach(b.spots) - reach(a.spots))
  return sorted.filter((path, i) => i < mostArrows && (i === 0 || reach(path.spots) > leastLong * long))
}

/** The path of the middle of the outermost edge of what goes far; of several, of one that is seen. */
function pathOf(way: Way, stage: Stage, move: Move, poses: readonly Pose[]): Path | undefined {
  const middle = poses[Math.floor(poses.length / 2)]
  const own = way.structure.plates.filter(({ name, piece }) => {
    const kind = way.structure.pieces.find((one) => one.name === piece)?.kind
    return move.plates.includes(name) && (kind !== 'layer' || move.heads.includes(name))
  })
  const ends = own.flatMap(({ name, outline }) => {
    const [from, half, to] = [poses[0]?.get(name), middle?.get(name), poses.at(-1)?.get(name)]
    if (!from || !half || !to) return []
    const loop = flatLoop(outline)
    return loop.map((p, i) => {
      const q = loop[(i + 1) % loop.length] ?? p
      const point: Flat = [(p[0] + q[0]) / 2, (p[1] + q[1]) / 2]
      const [a, b, c] = [inSpace(from, point), inSpace(half, point), inSpace(to, point)]
      return { plate: name, point, at: a, long: length(less(b, a)) + length(less(c, b)) }
    })
  })
  const most = Math.max(0, ...ends.map(({ long }) => long))
  const going = ends.filter(({ long }) => long > leastShare * most)
  const away = distanceFrom(creaseOf(way, move, poses[0]))
  const outermost = Math.max(...going.map(({ at }) => away(at)))
  const far = going.filter(({ at }) => away(at) > 0.97 * outermost)
  const best = far.find(({ plate, at }) => isSeen(stage, plate, at)) ?? far[0]
  if (!best || most === 0) return undefined
  const places = poses.flatMap((pose) => {
    const place = pose.get(best.plate)
    return place ? [inSpace(place, best.point)] : []
  })
  const towards = middle === undefined || isTowards(way.structure, move, middle, way.camera.eye)
  return {
    plate: best.plate,
    point: best.point,
    places,
    spots: places.map((at) => project(way.camera, at, 1)),
    way: towards ? 'towards' : 'away',
  }
}

/** Where the crease is that a movement turns about; of several, one of them. */
function creaseOf({ structure }: Way, { heads, stays }: Move, pose: Pose | undefined): readonly Vector[] {
  const place = pose?.get(stays)
  const hinge = structure.hinges.find(
    ({ between }) => between.includes(stays) && between.some((name) => heads.includes(name)),
  )
  return place && hinge ? flatLine(hinge.line).map((p) => inSpace(place, p)) : []
}

/** How far a point is from a straight line; the same for all if there is none. */
function distanceFrom([from, to]: readonly Vector[]): (at: Vector) => number {
  if (!from || !to) return () => 1
  const line = less(to, from)
  return (at) => length(cross(less(at, from), line)) / length(line)
}

/** Whether nothing is in front of a point of a plate. */
function isSeen({ picture }: Stage, plate: string, at: Vector): boolean {
  const spot = project(picture.camera, at, 1)
  const own = picture.faces.findLastIndex((face) => face.plate.name === plate)
  return seenAt(picture, spot, own) < 0
}

/** From where a piece is held to where it is stuck on: the corner of it that is seen best. */
function ontoPath(way: Way, { pose, joins, picture }: Stage): Path[] {
  const above = lifted(way, pose, joins)
  const points = way.structure.plates.flatMap(({ name, outline }) => {
    const [from, to] = [above.get(name), pose.get(name)]
    if (!joins.includes(name) || !from || !to) return []
    return flatLoop(outline).map((point) => ({
      name,
      point,
      from: inSpace(from, point),
      to: inSpace(to, point),
    }))
  })
  // The lowest on the paper: what is stuck on hides least of the way there.
  const low = points.map(({ from }) => project(way.camera, from, 1)[1])
  const best = points[low.indexOf(Math.max(...low))]
  if (!best || picture.faces.length === 0) return []
  const places = [best.from, mix3(best.from, best.to, 0.5), best.to]
  return [
    {
      plate: best.name,
      point: best.point,
      places,
      spots: places.map((at) => project(way.camera, at, 1)),
      way: 'onto',
    },
  ]
}

/** How far the ends and the top of a path are from one another. */
function reach(spots: readonly Spot[]): number {
  const [first = [0, 0]] = spots
  return Math.max(...spots.map(([x, y]) => Math.hypot(x - first[0], y - first[1])))
}
