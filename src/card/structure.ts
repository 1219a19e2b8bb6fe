import type Fraction from 'fraction.js'
import type { Length, Size } from '../length/length.ts'

/** A point of a flat piece: x from its left edge, y from its lower edge, inside face up. */
export interface Point {
  readonly x: Length
  readonly y: Length
}

/** A straight line on a flat piece. */
export interface Segment {
  readonly from: Point
  readonly to: Point
}

/** A closed polygon, counter-clockwise, without its first point again at the end. */
export type Polygon = readonly Point[]

/** The two sides of a piece. `face` is the inside of the base, and the side that shows of anything stuck on. */
export type Side = 'face' | 'back'

/** Which way a crease bends: a valley towards whoever looks at the face, a mountain away. */
export type Fold = 'valley' | 'mountain'

/** A sheet material. */
export interface Stock {
  readonly name: string
  /** Thickness of one sheet. */
  readonly caliper: Length
  /** Grams to the square metre, where the lesson says it. */
  readonly gsm?: Fraction
  /** `upright`: the pattern has a top, so pieces of it are never turned. */
  readonly direction?: 'upright'
}

/** What a piece is for; figures and lists tell them apart by it. */
export type PieceKind = 'base' | 'layer' | 'span' | 'loose'

/** A piece cut from one sheet, lying flat. */
export interface Piece {
  readonly name: string
  readonly kind: PieceKind
  readonly stock: Stock
  readonly count: number
  readonly size: Size
  /** Cuts inside the outline: slits, and the edges of windows. */
  readonly cuts: readonly Segment[]
}

/** A flat, rigid polygon of one piece: a panel of the base, or a whole layer. Its points are in its piece's frame. */
export interface Plate {
  readonly name: string
  readonly piece: string
  readonly outline: Polygon
  /** Windows cut out of it. */
  readonly holes: readonly Polygon[]
}

/** A score line that joins two plates of one piece. */
export interface Hinge {
  readonly between: readonly [string, string]
  readonly line: Segment
  readonly fold: Fold
}

/**
 * One plate stuck on another. A point of `plate` is carried to the frame of `onto` by turning it over
 * (x becomes -x) if `over`, then turning it by `turn` degrees counter-clockwise, then moving it by `at`.
 */
export interface Bond {
  readonly plate: string
  readonly onto: string
  /** The side of `onto` it is stuck on. */
  readonly side: Side
  readonly over: boolean
  /** Quarter turns are exact; others are for pieces that are stuck on slanting, such as a v-fold. */
  readonly turn: number
  readonly at: Point
  /** Height of foam between the two; zero for glue and tape. */
  readonly height: Length
  /** How far `plate` can be pulled along `onto`, from `at`, when it is held by a channel rather than stuck. */
  readonly slide?: Point
}

/** Something stuck on a plate whose thickness counts but that is no plate of its own, such as a letter. */
export interface Pad {
  readonly name: string
  readonly onto: string
  /** The side of `onto` it is stuck on. */
  readonly side: Side
  /** What it covers, in the frame of the piece of `onto`. */
  readonly outline: Polygon
  /** Its own thickness and that of the foam under it. */
  readonly height: Length
}

/** How far a crease is bent, in degrees: 0 flat, 180 folded on itself. */
export interface Bend {
  readonly hinge: readonly [string, string]
  readonly degrees: number
}

/** Where a standing card comes to rest: a line of one plate meets a line of another. Both in their piece's frame. */
export interface Stop {
  readonly plate: string
  readonly edge: Segment
  readonly onto: string
  readonly line: Segment
}

/** How the card is shown standing. */
export interface Display {
  /** Of the creases that do not follow from the rest. */
  readonly angles: readonly Bend[]
  /** The plate that stays put, and whether it lies on the table or stands on its lower edge, facing the viewer. */
  readonly plate: string
  readonly rests: 'flat' | 'upright'
  /** Turn of the upright card about the vertical, in degrees, counter-clockwise seen from above. */
  readonly turn: number
}

/** A card as plates, hinges and bonds. Everything else is read off this. */
export interface Structure {
  readonly pieces: readonly Piece[]
  readonly plates: readonly Plate[]
  readonly hinges: readonly Hinge[]
  readonly bonds: readonly Bond[]
  readonly stops: readonly Stop[]
  readonly pads?: readonly Pad[]
  /**
   * Creases of the shut card that are known beforehand. 0 and 180 settle what the search for the flat card would
   * otherwise choose. Any other angle makes the card a box: it is not laid flat, and shut it stands as these say.
   */
  readonly shut?: readonly Bend[]
  /** Plates whose outside is read the other way up, as the front of a card that hangs from its upper edge. */
  readonly upsideDown?: readonly string[]
  readonly display: Display
}
