import type { Structure } from '../../card/structure.ts'
import { movedTo } from '../../fold/place.ts'
import type { Act, Placement, Pose, Vector } from '../../fold/pose.ts'
import { flatLoop } from '../plane.ts'
import { dot, inSpace, less } from '../space.ts'

/** Panels that move as one thing: what hangs together without the panels that stay. */
export interface Move {
  /** All plates that move, with what is stuck on them. */
  readonly plates: readonly string[]
  /** Those of them that hang on what stays, along creases that bend. */
  readonly heads: readonly string[]
  /** What they hang on. */
  readonly stays: string
}

/** What has moved by less than this, in mm, has not. */
const still = 0.2

/**
 * The plate that counts as staying where it is: the one that the card stays put on, or if it is not there, the one with
 * the first place.
 */
export const anchorOf = ({ display }: Structure, pose: Pose): string =>
  pose.has(display.plate) ? display.plate : ([...pose.keys()][0] ?? '')

/** The pose moved so that the plate that stays is where it was: panels below the table lift the whole card. */
export function asSeenFrom(anchor: string, there: Pose, pose: Pose): Pose {
  const [from, to] = [pose.get(anchor), there.get(anchor)]
  if (!from || !to) return pose
  const move = movedTo(from, to)
  return new Map([...pose].map(([name, place]) => [name, move(place)]))
}

/** The plates that are elsewhere in the one pose than in the other, as seen from the plate that stays. */
export function movedPlates(structure: Structure, from: Pose, end: Pose): Set<string> {
  const to = asSeenFrom(anchorOf(structure, from), from, end)
  const moved = structure.plates.filter(({ name, outline }) => {
    const [a, b] = [from.get(name), to.get(name)]
    return a && b && flatLoop(outline).some((p) => length(less(inSpace(b, p), inSpace(a, p))) > still)
  })
  return new Set(moved.map(({ name }) => name))
}

/** The panels that move from one pose to another, each thing that hangs together by itself. */
export function movesBetween(structure: Structure, from: Pose, to: Pose, acts: readonly Act[]): Move[] {
  const moving = movedPlates(structure, from, to)
  const bends = acts.flatMap((act) => act.bends)
  const joined = [
    ...structure.hinges.map(({ between }) => between),
    ...structure.bonds
      .filter(({ plate, onto }) => isHeldThere(structure, plate, onto, from, to))
      .map(({ plate, onto }) => [plate, onto] as const),
  ]
  const left = new Set(moving)
  const moves: Move[] = []
  for (const first of moving) {
    if (!left.has(first)) continue
    const found = [first]
    left.delete(first)
    for (const name of found)
      for (const two of joined) {
        const next = two[0] === name ? two[1] : two[1] === name ? two[0] : undefined
        if (next === undefined || !left.has(next)) continue
        left.delete(next)
        found.push(next)
      }
    const hangs = bends.filter(
      ([a, b]) => found.includes(a) !== found.includes(b) && moving.has(a) !== moving.has(b),
    )
    const heads = [...new Set(hangs.map(([a, b]) => (found.includes(a) ? a : b)))]
    const [stays = ''] = hangs.map(([a, b]) => (found.includes(a) ? b : a))
    if (heads.length > 0) moves.push({ plates: found, heads, stays })
  }
  return moves
}

/** Whether a bond keeps two plates together on the way: they do not move against one another. */
function isHeldThere({ plates }: Structure, plate: string, onto: string, from: Pose, to: Pose): boolean {
  const outline = plates.find(({ name }) => name === plate)?.outline
  const [a, b, c, d] = [from.get(plate), from.get(onto), to.get(plate), to.get(onto)]
  if (!outline || !a || !b || !c || !d) return false
  return flatLoop(outline).every((p) => {
    const [before, after] = [seenFrom(b, inSpace(a, p)), seenFrom(d, inSpace(c, p))]
    return length(less(after, before)) < still
  })
}

/** A point in the frame of a plate. */
export function seenFrom({ origin, right, up, normal }: Placement, p: Vector): Vector {
  const v = less(p, origin)
  return [dot(v, right), dot(v, up), dot(v, normal)]
}

export const length = (v: Vector): number => Math.hypot(v[0], v[1], v[2])

/** Whether a panel that moves is on the viewer's side of the one that it hangs on, or behind it. */
export function isTowards(structure: Structure, { heads, stays }: Move, pose: Pose, eye: Vector): boolean {
  const ground = pose.get(stays)
  if (!ground) return true
  const heights = structure.plates.flatMap(({ name, outline }) => {
    const place = heads.includes(name) ? pose.get(name) : undefined
    return place ? flatLoop(outline).map((p) => seenFrom(ground, inSpace(place, p))[2]) : []
  })
  // Panels that go as far to one side as to the other are pushed together rather than folded.
  const [low, high] = [Math.min(0, ...heights), Math.max(0, ...heights)]
  const lean = (low + high) * (dot(ground.normal, eye) < 0 ? -1 : 1)
  return lean >= -0.1 * (high - low)
}

/** How far a crease is bent, in degrees: 0 flat, 180 folded on itself. */
export function bentBy(pose: Pose, [a, b]: readonly [string, string]): number {
  const [one, other] = [pose.get(a)?.normal, pose.get(b)?.normal]
  if (!one || !other) return 0
  const degrees = (Math.acos(Math.min(1, Math.max(-1, dot(one, other)))) * 180) / Math.PI
  // An arc cosine is least exact where creases lie flat.
  return Math.round(degrees * 1e4) / 1e4
}

/** Creases are the same whichever of their plates is named first. */
export const isSame = (a: readonly [string, string], b: readonly [string, string]): boolean =>
  (a[0] === b[0] && a[1] === b[1]) || (a[0] === b[1] && a[1] === b[0])

/** Whether a crease is one of those that these acts bend. */
export const bendsIn = (acts: readonly Act[], between: readonly [string, string]): boolean =>
  acts.some(({ bends }) => bends.some((two) => isSame(two, between)))
