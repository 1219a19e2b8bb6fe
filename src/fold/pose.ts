import type { Finding } from '../length/finding.ts'
import type { Length, Size } from '../length/length.ts'

export type Vector = readonly [x: number, y: number, z: number]

/**
 * Where a plate is in space: a rigid motion from its piece's flat frame (x right, y up, z towards whoever looks at
 * the face) into the frame of the view (x right, y up, z towards the viewer). In millimetres.
 * A point (x, y) goes to `origin + x * right + y * up`; `normal = right × up` points away from the face.
 */
export interface Placement {
  readonly origin: Vector
  readonly right: Vector
  readonly up: Vector
  readonly normal: Vector
}

/** Where all plates of a card are at one moment. */
export type Pose = ReadonlyMap<string, Placement>

/** A plate in the shut card. Exact where all creases are parallel, else to a millionth of a millimetre. */
export interface Laid {
  readonly plate: string
  /** Whether its face looks at the viewer. */
  readonly faceUp: boolean
  /** The rectangle it covers, from the lower left corner of the shut card. */
  readonly left: Length
  readonly bottom: Length
  readonly size: Size
}

/** A part of the shut card all over which the same sheets lie on each other. */
export interface MapCell {
  /** A trapezoid or a triangle, counter-clockwise, in mm from the lower left corner of the shut card. */
  readonly outline: readonly (readonly [x: number, y: number])[]
  /** From front to back. */
  readonly sheets: readonly MappedSheet[]
  /** Of the sheets, the foam between them and the pads on them. */
  readonly thickness: Length
}

export interface MappedSheet {
  readonly plate: string
  readonly caliper: Length
  /** Foam and pads between it and the next one behind it, or on its back if it is the last. */
  readonly behind: Length
}

/** The card shut. */
export interface Closed {
  /** A box is not: its plates stand, and its thickness is its depth, seen on the plate that stays put. */
  readonly isFlat: boolean
  readonly size: Size
  readonly plates: readonly Laid[]
  /** Names of the plates from the one nearest to the viewer to the one on the table. */
  readonly order: readonly string[]
  readonly thickness: Length
  /** The thickness place by place; `thickness` is the greatest. Nothing for a box. */
  readonly map: readonly MapCell[]
  readonly pose: Pose
}

/** The card standing. Height is measured upwards from the table, depth away from the viewer. */
export interface Standing {
  readonly width: number
  readonly height: number
  readonly depth: number
  readonly pose: Pose
}

/** One thing that a hand does on the way from the flat sheet to the shut card. */
export interface Act {
  /** When it begins and ends, as shares of the whole way. Acts follow one another without a gap. */
  readonly from: number
  readonly to: number
  /** The creases that bend, each by the two plates that it joins. */
  readonly bends: readonly (readonly [string, string])[]
  /** The plates that are stuck on when it begins. They are missing in all poses before. */
  readonly joins: readonly string[]
}

/**
 * How the card is made: from the sheet that lies flat, with what can be stuck on it as it lies, to the shut card. What
 * holds creases together comes where they stand as they should when it is stuck on.
 */
export interface Making {
  readonly acts: readonly Act[]
  /**
   * Where the plates are after `share` of the way from flat (0) to shut (1), in the frame of `between`, which goes on
   * from there: the plate that stays put lies or stands as in the standing card.
   */
  readonly poseAt: (share: number) => Pose | undefined
}

/** What folding a structure found out. */
export interface Proof {
  /** Missing when the card does not fold flat; then `findings` says why. */
  readonly closed?: Closed
  readonly standing?: Standing
  /** 0 rigid, 1 moves as one, more is floppy: how many angles are free. */
  readonly freedom: number
  /** The pose part of the way from shut (0) to standing (1); undefined when it cannot be reached. */
  readonly between: (share: number) => Pose | undefined
  /**
   * The creases, each by the two plates that it joins, in an order in which a hand can fold them one after the other,
   * from the flat sheet to the shut card; those that move together in a ring left out. Undefined when none was found.
   */
  readonly folding: () => readonly (readonly [string, string])[] | undefined
  /** How the card is made from the flat sheet; undefined when it does not shut or no way was found. */
  readonly making: () => Making | undefined
  readonly findings: readonly Finding[]
}
