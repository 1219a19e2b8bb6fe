import type { Rounding } from '../length/grid.ts'
import type { Length, Size } from '../length/length.ts'
import type { Reading } from './reading.ts'
import type { Shape } from './shape.ts'
import type { Side, Stock, Structure } from './structure.ts'
import type { Entry, Fields } from './yaml.ts'

/** A length that a fold style takes from the card block. */
export interface Parameter {
  /** What it is, for the catalogue. */
  readonly help: string
  /** Its usual value, as an expression over the closed size and the other parameters. */
  readonly usual: string
  /** Which way it goes when it is put on the ruler grid. */
  readonly round: Rounding
}

/** A number of alike parts that a fold style takes from the card block. */
export interface Count {
  readonly help: string
  readonly usual: number
  readonly least: number
  readonly most: number
}

/** A word that a fold style takes from the card block. The first one is usual. */
export interface Choice {
  readonly help: string
  readonly words: readonly [string, ...string[]]
  /** Words that stand for one of these, decided by which way the shut card stands. */
  readonly byShape?: Readonly<Record<string, Readonly<Record<Shape, string>>>>
}

/** Every word that a choice takes, the usual one first. */
export const wordsOf = ({ words, byShape = {} }: Choice): readonly [string, ...string[]] => [
  ...words,
  ...Object.keys(byShape),
]

/** The counts and words of one card: they decide which panels it has, so they are plain and never computed. */
export interface Chosen<C extends string = string, W extends string = string> {
  readonly counts: Readonly<Record<C, number>>
  readonly choices: Readonly<Record<W, string>>
}

/** What a fold style builds from: the closed size and its own parameters, all on the ruler grid. */
export interface BuildInput<P extends string = string, C extends string = string, W extends string = string>
  extends Chosen<C, W> {
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

/** The panels of a card that layers can sit on, and the side of each that shows and is taken unless a layer says otherwise. */
export type Panels = Readonly<Record<string, Side>>

/** A fold of the trade. One file each; it only builds structure. */
export interface FoldStyle<P extends string = string, C extends string = string, W extends string = string> {
  readonly name: string
  /** One line for the catalogue. */
  readonly summary: string
  /** The part that takes what does not divide on the ruler, where the fold divides a length; for the catalogue. */
  readonly remainder?: string
  readonly parameters: Readonly<Record<P, Parameter>>
  readonly counts?: Readonly<Record<C, Count>>
  readonly choices?: Readonly<Record<W, Choice>>
  /** Of the usual card. */
  readonly panels: Panels
  /** Of a card with other counts and words, when those change its panels. */
  panelsFor?(chosen: Chosen<C, W>): Panels
  /** The pieces that it builds besides the base. */
  readonly pieces?: readonly string[]
  /** Keys besides those of the parameters, for a fold that lists parts of its own and reads them itself. */
  readonly keys?: readonly string[]
  /** Reads such a list: what comes back has a parameter for each length in it. */
  read?(reading: Reading, fields: Fields): ReadFold
  /** What cannot be made of these lengths; checked before building. */
  limits(input: BuildInput<P, C, W>): readonly Limit<P>[]
  build(input: BuildInput<P, C, W>): Built
  /** The card block of a starter lesson, without the fence. */
  readonly starter: string
}

/** A fold as one card block has it, and the entries of its parameters where they are written. */
export interface ReadFold {
  readonly style: FoldStyle
  readonly entries: ReadonlyMap<string, Entry>
}
