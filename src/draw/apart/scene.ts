import type { Card } from '../../card/card.ts'
import { viewOf } from '../../fold/place.ts'
import type { Pose, Proof } from '../../fold/pose.ts'
import { type Camera, cameraAt, frontLeft } from '../camera.ts'
import { dot } from '../space.ts'
import { facing } from './facing.ts'
import { flatPose } from './flat.ts'
import { centred, groundsOf } from './ground.ts'
import { isTrapped, type Lift, type Posed } from './lifts.ts'
import { type Part, partsOf, supportsFrom } from './parts.ts'

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
export const fromAbove = cameraAt(36, 30)

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
  const lying = flat && { ...base, pose: centred(flat, grounds, structure, parts) }
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
