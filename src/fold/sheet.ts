import type { Assembly } from './assembly.ts'
import type { Linkage } from './linkage.ts'
import type { Rings } from './rings.ts'

/** A sheet with its creases, and what is stuck on it, as rigid bodies that lie flat when no crease is bent. */
export interface Sheet {
  readonly assembly: Assembly
  readonly rings: Rings
  readonly linkage: Linkage
}
