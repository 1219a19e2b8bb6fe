import type { Layer, Lettering } from './card.ts'
import type { Reading } from './reading.ts'
import type { Cell } from './scope.ts'
import type { Bond, Piece, Plate, Stock } from './structure.ts'
import type { Built } from './style.ts'
import type { FindTargets } from './targets.ts'
import type { Fields } from './yaml.ts'

/** What the readers of layers, spans and the rest work with. */
export interface Workbench extends Reading {
  /** The bare mechanism; throws BrokenName when it cannot be built. */
  readonly built: Cell<Built>
  readonly stockOf: (fields: Fields, usual: string) => Stock
  readonly find: FindTargets
  /** Names that something can be put on. */
  readonly known: () => readonly string[]
}

/** Something stuck on: its piece, the plates it lies as, and what holds them. */
export interface Part {
  readonly piece: Piece
  readonly plates: readonly Plate[]
  readonly bonds: readonly Bond[]
  readonly layer?: Layer
}

export type PartCell = Cell<Part>
export type LetteringCell = Cell<Lettering>
