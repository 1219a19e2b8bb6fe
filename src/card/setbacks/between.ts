import type { Length } from '../../length/length.ts'
import type { Hinge } from '../structure.ts'

/** A place of the shut card where both plates of a folded crease lie on each other. */
export interface Between {
  /** From the crease to the nearest spot of this place. */
  readonly distance: Length
  /** What lies between the two plates here: sheets, foam and pads. */
  readonly thickness: Length
  /** The plates that lie between, without the two. */
  readonly plates: readonly string[]
}

/** What lies in each crease of a shut card, from whoever can fold it; nothing in a crease that lies open then. */
export type InCrease = (crease: Hinge) => readonly Between[]
