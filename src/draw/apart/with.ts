import type { Structure } from '../../card/structure.ts'
import { facing } from './facing.ts'
import { flatPose } from './flat.ts'
import { isTrapped } from './lifts.ts'
import { type Parts, supportsFrom } from './parts.ts'
import { fromAbove, type Scene } from './scene.ts'

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
