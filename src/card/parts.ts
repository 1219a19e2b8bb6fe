import type { Length } from '../length/length.ts'
import type { Border, Layer, Lettering } from './card.ts'
import type { Reading } from './reading.ts'
import type { Cell } from './scope.ts'
import type { InCrease } from './setbacks/between.ts'
import type { Bond, Piece, Plate, Side, Stock } from './structure.ts'
import type { Built } from './style.ts'
import type { FindTargets } from './targets.ts'
import type { Fields } from './yaml.ts'

/** How thick something stuck on is, and where: known without its size, so that a border may depend on it. */
export interface Sheet {
  /** Names of the panels and parts that it is on. */
  readonly on: () => readonly string[]
  /** Which side of them; when absent the one that shows. */
  readonly side?: Side
  /** Its caliper and the foam under it. */
  readonly height: Cell<Length>
  /** Of a layer. */
  readonly border?: Readonly<Record<keyof Border, Cell<Length>>>
}

/** What the readers of layers, spans and the rest work with. */
export interface Workbench extends Reading {
  /** The bare mechanism; throws BrokenName when it cannot be built. */
  readonly built: Cell<Built>
  readonly stockOf: (fields: Fields, usual: string) => Stock
  readonly find: FindTargets
  /** What a panel is called in the structure: a name that turns with the card stands for one of them. */
  readonly nameOf: (name: string) => string
  /** Where the spine of the shut card is, for a fold that can have it there or there. */
  readonly spine?: 'left' | 'top'
  /** Everything that is stuck on, by its name. */
  readonly sheets: Map<string, Sheet>
  /** Which side of a panel shows; the face of anything stuck on. */
  readonly sideOf: (name: string) => Side
  /** What lies in the creases of the bare mechanism when it is shut; undefined when nobody can fold it. */
  readonly bareCreases: () => InCrease | undefined
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
