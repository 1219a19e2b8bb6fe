import type { Card } from '../card/card.ts'
import type { Structure } from '../card/structure.ts'
import { viewOf } from '../fold/place.ts'
import type { Placement, Pose, Proof, Vector } from '../fold/pose.ts'
import { sum } from '../fold/space.ts'
import { flatPose } from './apart-flat.ts'
import { isTrapped, type Lift, liftsOf, type Posed } from './apart-lifts.ts'
import { type Part, type Parts, partsOf, supportsFrom } from './apart-parts.ts'
import { type Camera, cameraAt, frontLeft } from './camera.ts'
import { facesOf } from './face.ts'
import { dot } from './space.ts'

/** A card ready to be lifted apart. */
export interface Scene extends Posed {
  readonly lifts: ReadonlyMap<Part, Lift>
  /** All sheets lie unfolded on the table; else the card stands. */
  readonly isFlat: boolean
  /** It lies with its outside up. */
  readonly isOver: boolean
  readonly camera: Camera
}

/** From above on what lies on the table, so that its length and its width both show. */
const fromAbove = cameraAt(36, 30)

/** All pieces of a card, in the pose in which they are stuck together. */
export function sceneOf({ structure }: Card, { standing, between }: Proof): Scene | undefined {
  const pose = standing?.pose ?? between(1)
  if (!pose) return undefined
  const parts = partsOf(structure)
  const grounds = groundsOf(structure, parts)
  const [ground] = grounds
  if (!ground) return undefined
  const supports = supportsFrom(grounds, parts.holds)
  const base = { structure, parts, still: [ground], supports }
  const flat = flatPose(parts, grounds, supports, pose)
  const lying = flat && { ...base, pose: centred(flat, grounds, structure) }
  if (lying && !isTrapped(lying)) return facing({ ...lying, isFlat: true, camera: fromAbove })
  const root = pose.get(
    ground.plates.find((name) => name === structure.display.plate) ?? ground.plates[0] ?? '',
  )
  if (!root) return undefined
  const towards = parts.holds.map(({ bond }) =>
    Math.abs(dot(pose.get(bond.onto)?.normal ?? root.normal, root.normal)),
  )
  // Where nearly all is put on from one side, it lies on the table; what is put together from all sides stands.
  const lies = towards.filter((cos) => cos > 0.9).length > towards.length * 0.7
  const turn = viewOf(root, { rests: 'flat', turn: 0 })
  const placed: Pose = lies ? new Map([...pose].map(([name, at]) => [name, turn(at)])) : pose
  return facing({ ...base, pose: placed, isFlat: false, camera: lies ? fromAbove : frontLeft })
}

/** What everything hangs on, and first sheets of what hangs on nothing of it, such as a lid. */
function groundsOf({ display }: Structure, { all, holds, partOf }: Parts): Part[] {
  const climb = (start: Part): Part => {
    const seen = new Set<Part>()
    let part = start
    for (;;) {
      seen.add(part)
      const under = holds.find((hold) => hold.part === part && !seen.has(hold.under))?.under
      if (!under) return part
      part = under
    }
  }
  const first = partOf(display.plate) ?? all[0]
  if (!first) return []
  const grounds = [climb(first)]
  for (const part of all) {
    const reached = supportsFrom(grounds, holds)
    if (!grounds.includes(part) && !reached.has(part)) grounds.push(climb(part))
  }
  return grounds
}

/** Further grounds over the middle of the first. */
function centred(pose: Pose, grounds: readonly Part[], structure: Structure): Pose {
  const middle = (plates: readonly string[]): readonly [number, number] => {
    const points = structure.plates
      .filter(({ name }) => plates.includes(name))
      .flatMap(({ outline }) => outline.map(({ x, y }) => [x.valueOf(), y.valueOf()] as const))
    const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)]
    return [(Math.min(...xs) + Math.max(...xs)) / 2, (Math.min(...ys) + Math.max(...ys)) / 2]
  }
  const [first, ...others] = grounds
  const [x, y] = middle(first?.plates ?? [])
  const parts = partsOf(structure)
  const moved = new Map(pose)
  for (const ground of others) {
    const [u, v] = middle(ground.plates)
    const members = [ground, ...supportsFrom([ground], parts.holds).keys()].flatMap(({ plates }) => plates)
    for (const name of members) {
      const at = pose.get(name)
      if (at) moved.set(name, { ...at, origin: sum(at.origin, [x - u, 0, v - y]) })
    }
  }
  return moved
}

/** With the side up on which things are stuck, if they all are on one, and everything lifted. */
function facing(scene: Omit<Scene, 'lifts' | 'isOver'>): Scene {
  const lifts = liftsOf(scene)
  const { parts, still, pose } = scene
  const groups = parts.all
    .filter((part) => !scene.supports.has(part))
    .map((part) => [part, ...supportsFrom([part], parts.holds).keys()])
  const hangs = (group: readonly Part[]): boolean => {
    const ways = group.flatMap((part) => lifts.get(part)?.way[1] ?? [])
    return scene.isFlat && ways.some((y) => y < -0.5) && !ways.some((y) => y > 0.5)
  }
  const over = groups.filter(hangs)
  if (over.length === 0) return { ...scene, isOver: false, lifts: withLids(scene, lifts) }
  const turned = new Map(pose)
  for (const group of over) {
    const plates = group.flatMap((part) => part.plates)
    const turn = turnedOver(middleOf(scene, group[0]?.plates ?? []))
    for (const name of plates) {
      const at = pose.get(name)
      if (at) turned.set(name, turn(at))
    }
  }
  const next = { ...scene, pose: turned }
  const isOver = over.some(([first]) => first !== undefined && still.includes(first))
  return { ...next, isOver, lifts: withLids(next, liftsOf(next)) }
}

/** Where the middle of plates is, from left to right. */
function middleOf({ structure, pose }: Pick<Scene, 'structure' | 'pose'>, plates: readonly string[]): number {
  const xs = facesOf(structure, pose)
    .filter(({ plate }) => plates.includes(plate.name))
    .flatMap(({ outline }) => outline.map(({ at }) => at[0]))
  return (Math.min(...xs) + Math.max(...xs)) / 2
}

/** Over from left to right, in its place. */
function turnedOver(middle: number): (at: Placement) => Placement {
  const turn = ([x, y, z]: Vector): Vector => [-x, -y, z]
  return ({ origin: [x, y, z], right, up, normal }) => ({
    origin: [2 * middle - x, -y, z],
    right: turn(right),
    up: turn(up),
    normal: turn(normal),
  })
}

/** What hangs on nothing, as a lid, is lifted over all else. */
function withLids({ parts, still, supports }: Posed, lifts: Map<Part, Lift>): Map<Part, Lift> {
  const all = new Map(lifts)
  const total = (part: Part): number => {
    const lift = all.get(part)
    return lift ? (lift.way[1] > 0.5 ? lift.steps : 0) + (lift.with ? total(lift.with) : 0) : 0
  }
  for (const part of parts.all) {
    if (still.includes(part) || supports.has(part)) continue
    const own = [...supportsFrom([part], parts.holds).keys()]
    const below = own.map((one) => {
      const lift = lifts.get(one)
      return lift && lift.way[1] < -0.5 ? lift.steps : 0
    })
    const others = parts.all.filter((one) => one !== part && !own.includes(one))
    const steps = 1 + Math.max(0, ...below) + Math.max(0, ...others.map(total))
    all.set(part, { way: [0, 1, 0], steps, over: [] })
  }
  return all
}

/**
 * A piece with what it goes on, which stays where it is, and what it carries; the numbers stay those of the whole card.
 *
 * @returns nothing when the piece is on nothing and carries nothing.
 */
export function sceneWith(whole: Scene, piece: string): Scene | undefined {
  const { parts, supports } = whole
  const own = new Set(parts.all.filter((part) => part.piece === piece))
  for (const part of own) for (const [other, { on }] of supports) if (on === part) own.add(other)
  const beside = parts.holds.flatMap(({ part, under }) =>
    own.has(part) !== own.has(under) ? [own.has(part) ? under : part] : [],
  )
  const kept = parts.all.filter((part) => own.has(part) || beside.includes(part))
  const holds = parts.holds.filter((hold) => kept.includes(hold.part) && kept.includes(hold.under))
  if (holds.length === 0) return undefined
  const still = kept.filter((part) => !own.has(part) || !kept.includes(supports.get(part)?.on ?? part))
  const plates = new Set(kept.flatMap((part) => part.plates))
  const within = (name: string): boolean => plates.has(name)
  const structure: Structure = {
    ...whole.structure,
    plates: whole.structure.plates.filter(({ name }) => within(name)),
    hinges: whole.structure.hinges.filter(({ between }) => between.every(within)),
    bonds: whole.structure.bonds.filter(({ plate, onto }) => within(plate) && within(onto)),
  }
  const some: Parts = { ...parts, all: kept, holds }
  const base = { structure, parts: some, still, supports: supportsFrom(still, holds) }
  const flat = !whole.isFlat && still.length === 1 && flatPose(some, still, base.supports, whole.pose)
  const lying = flat ? { ...base, pose: flat } : undefined
  return lying && !isTrapped(lying)
    ? facing({ ...lying, isFlat: true, camera: fromAbove })
    : facing({ ...base, pose: whole.pose, isFlat: whole.isFlat, camera: whole.camera })
}
