import type { Making, Placement, Pose, Proof } from '../../fold/pose.ts'
import { between, type Rigid, spotOf, turnTo, type Vector } from '../../motion/rigid.ts'

/** A card at one moment: from flat (0) to shut (1) and on to standing (2). */
export interface Frame {
  readonly at: number
  readonly places: ReadonlyMap<string, Rigid>
}

/** So many moments to a leg at least, and more where something would be seen to leave its true way, in mm. */
const [least, tolerance] = [48, 0.1]
/** A stretch is halved no oftener than this. */
const deepest = 5
/** From the end of an act to the beginning of the next, in which things may be stuck on: a blink. */
const blink = 1e-4

/**
 * The moments at which a card is shown; in between, each plate goes straight on and turns evenly.
 *
 * @param corners of each plate in its own frame, in mm: what must not leave its way.
 * @param settled mends what a pose leaves out.
 */
export function framesOf(
  proof: Pick<Proof, 'between'>,
  making: Making | undefined,
  corners: ReadonlyMap<string, readonly Vector[]>,
  settled: (places: ReadonlyMap<string, Rigid>) => ReadonlyMap<string, Rigid> = (places) => places,
): Frame[] {
  const acts = making?.acts ?? []
  const starts = acts.slice(1).flatMap(({ from }) => [from, from + blink])
  const placesOf = (pose: Pose | undefined) => pose && settled(placesIn(pose))
  const first = making ? leg((share) => placesOf(making.poseAt(share)), 0, starts, corners) : []
  const second = leg((share) => placesOf(proof.between(share)), 1, [], corners)
  // Shut is the end of the one and the beginning of the other.
  return second.length > 1 && first.length > 0 ? [...first.slice(0, -1), ...second] : [...first, ...second]
}

function leg(
  placesAt: (share: number) => ReadonlyMap<string, Rigid> | undefined,
  start: number,
  also: readonly number[],
  corners: ReadonlyMap<string, readonly Vector[]>,
): Frame[] {
  const frameAt = (share: number): Frame | undefined => {
    const places = placesAt(share)
    return places && { at: start + share, places }
  }
  const even = Array.from({ length: least + 1 }, (_, i) => i / least)
  const apart = (share: number) => also.every((other) => Math.abs(other - share) > blink / 2)
  const shares = [...even.filter(apart), ...also].sort((a, b) => a - b)
  const frames = shares.flatMap((share) => frameAt(share) ?? [])
  return frames.flatMap((frame, i) => {
    const next = frames[i + 1]
    return next ? [frame, ...inside(frame, next, frameAt, start, corners, deepest)] : [frame]
  })
}

/** More frames between two, until the way from one to the next is straight enough. */
function inside(
  a: Frame,
  b: Frame,
  frameAt: (share: number) => Frame | undefined,
  start: number,
  corners: ReadonlyMap<string, readonly Vector[]>,
  depth: number,
): Frame[] {
  const middle = depth > 0 && b.at - a.at > 2 * blink ? frameAt((a.at + b.at) / 2 - start) : undefined
  if (!middle || strays(a, b, middle, corners) < tolerance) return []
  return [
    ...inside(a, middle, frameAt, start, corners, depth - 1),
    middle,
    ...inside(middle, b, frameAt, start, corners, depth - 1),
  ]
}

/** How far a corner is from where it should be half way, in mm. */
function strays(a: Frame, b: Frame, meant: Frame, corners: ReadonlyMap<string, readonly Vector[]>): number {
  let most = 0
  for (const [name, own] of corners) {
    const [from, to, there] = [a.places.get(name), b.places.get(name), meant.places.get(name)]
    if (!from || !to || !there) continue
    const middle = middleOf(own)
    const half = about(between(centred(from, middle), centred(to, middle), 0.5), middle)
    for (const corner of own) most = Math.max(most, distance(spotOf(half, corner), spotOf(there, corner)))
  }
  return most
}

/** The same place told by where the plate's middle is, which goes straighter than its corner does. */
export const centred = (place: Rigid, middle: Vector): Rigid => ({ ...place, at: spotOf(place, middle) })
const about = (place: Rigid, middle: Vector): Rigid => ({
  ...place,
  at: spotOf(place, [-middle[0], -middle[1], -middle[2]]),
})

export function middleOf(spots: readonly Vector[]): Vector {
  const sum = spots.reduce<Vector>(([x, y, z], p) => [x + p[0], y + p[1], z + p[2]], [0, 0, 0])
  return [sum[0] / spots.length, sum[1] / spots.length, sum[2] / spots.length]
}

export const distance = (a: Vector, b: Vector): number => Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2])

const placesIn = (pose: Pose): Map<string, Rigid> =>
  new Map([...pose].map(([name, placement]) => [name, rigidOf(placement)]))

const rigidOf = ({ origin, right, up, normal }: Placement): Rigid => ({
  at: origin,
  turn: turnTo(right, up, normal),
})
