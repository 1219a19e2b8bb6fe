import type { Place } from '../length/finding.ts'
import type { Length, Size, Unit } from '../length/length.ts'
import type { Mailing } from './mailing.ts'
import type { Names } from './names.ts'
import type { Origins } from './origins.ts'
import type { Pad, Side, Stock, Structure } from './structure.ts'
import type { SpanPlace } from './style.ts'

/** Distance of a layer's edges from the edges of what it sits on, seen with that face towards you. */
export interface Border {
  readonly left: Length
  readonly right: Length
  readonly top: Length
  readonly bottom: Length
}

/** A layer as checked: one piece for each panel it is on. */
export interface Layer {
  readonly name: string
  /** Names of the plates it sits on. */
  readonly on: readonly string[]
  /** Which side of them. */
  readonly side: Side
  readonly border: Border
  /** Names of its own plates, in the order of `on`. */
  readonly plates: readonly string[]
}

/** Letters spaced out evenly along a piece. Marks are the left edges, from the left end of the strip. */
export interface Lettering {
  readonly name: string
  readonly on: string
  readonly letters: readonly string[]
  readonly widths: readonly Length[]
  readonly gap: Length
  readonly marks: readonly Length[]
  readonly stock: Stock
  /** The letters as they lie in the thickness of the card, each as high as the strip. */
  readonly pads: readonly Pad[]
}

/** An envelope folded from one sheet. */
export interface Envelope {
  readonly make: 'diagonal' | 'side seam'
  readonly stock: Stock
  readonly sheet: Size
  /** Where the first score meets the edge, from the corner. */
  readonly score: Length
  readonly inside: Size
  /** From fold to fold when it is shut and flat, to 1/100 mm below. */
  readonly outside: Size
  /** The folds of a side seam envelope, from the sheet's left and lower edge; empty for a diagonal one. */
  readonly scores: readonly { readonly at: Length; readonly along: 'width' | 'height' }[]
  /** The sheet with its cuts and folds, its seams stuck: one piece `envelope`, whose front stays put. */
  readonly structure: Structure
  /** Its panels in the order in which they fold over the front. */
  readonly folding: readonly string[]
}

/** A card block without unknowns. */
export interface Card {
  /** `card` unless the block has a name of its own. */
  readonly name: string
  /** Name of the fold style. */
  readonly fold: string
  /** The size it must have when shut. */
  readonly closed: Size
  readonly unit: Unit
  readonly grid: Length
  readonly structure: Structure
  /** Where a span of this fold belongs, if it needs one to hold together. */
  readonly span?: SpanPlace
  readonly layers: readonly Layer[]
  readonly lettering: readonly Lettering[]
  readonly envelope?: Envelope
  readonly mailing: Mailing
  /** Everything a measure in braces can ask for. */
  readonly names: Names
  /** Where in the file things are said: `closed`, `fold`, and each layer, span and so on by its name. */
  readonly places: ReadonlyMap<string, Place>
  /** Where each length comes from that is not read off the structure. */
  readonly origins: Origins
}
