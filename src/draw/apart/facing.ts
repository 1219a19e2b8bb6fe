import type { Placement, Vector } from '../../fold/pose.ts'
import { facesOf } from '../face/face.ts'
import { type Lift, liftsOf, type Posed } from './lifts.ts'
import { type Part, supportsFrom } from './parts.ts'
import type { Scene } from './scene.ts'

/** With the side up on which things are stuck, if they all are on one, and everything lifted. */
export function facing(scene: Omit<Scene, 'lifts' | 'isOver'>): Scene {
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
