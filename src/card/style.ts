import type { Rounding } from '../length/grid.ts'
import type { Length, Size } from '../length/length.ts'
import type { Side, Stock, Structure } from './structure.ts'

/** A length that a fold style takes from the card block. */
export interface Parameter {
  /** What it is, for the catalogue. */
  readonly help: string
  /** Its usual value, as an expression over the closed size and the other parameters. */
  readonly usual: string
  /** Which way it goes when it is put on the ruler grid. */
  readonly round: Rounding
}

/** What a fold style builds from: the closed size and its own parameters, all on the ruler grid. */
export interface BuildInput<P extends string = string> {
  readonly closed: Size
  readonly lengths: Readonly<Record<P, Length>>
  readonly stock: Stock
  readonly grid: Length
  /** A length as text in the unit of this print, for messages. */
  readonly say: (x: Length) => string
}

/** The stretch that a span covers unless the card block says otherwise. */
export interface SpanPlace {
  readonly from: string
  readonly to: string
  readonly width: Length
}

/** Something that cannot be made of the lengths given, and what would cure it. */
export interface Limit<P extends string = string> {
  /** The parameter to blame: its place in the file is where the finding goes. */
  readonly about: P | 'closed'
  readonly message: string
  readonly suggestion: string
}

/** What a fold style gives: the bare mechanism, before layers and spans are stuck on. */
export interface Built extends Structure {
  readonly span?: SpanPlace
}

/** A fold of the trade. One file each; it only builds structure. */
export interface FoldStyle<P extends string = string> {
  readonly name: string
  /** One line for the catalogue. */
  readonly summary: string
  readonly parameters: Readonly<Record<P, Parameter>>
  /** The panels that layers can sit on, and the side of each that shows and is taken unless a layer says otherwise. */
  readonly panels: Readonly<Record<string, Side>>
  /** What cannot be made of these lengths; checked before building. */
  limits(input: BuildInput<P>): readonly Limit<P>[]
  build(input: BuildInput<P>): Built
  /** The card block of a starter lesson, without the fence. */
  readonly starter: string
}
