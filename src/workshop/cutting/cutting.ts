import type Fraction from 'fraction.js'
import type { Length, Size, Unit } from '../../length/length.ts'

/** A side of a piece or sheet along which something runs. */
export type Along = 'width' | 'height'

export type Edge = 'left' | 'right' | 'bottom' | 'top'

/** A piece to be cut, and how many of it. */
export interface WantedPiece {
  readonly lesson: string
  readonly name: string
  readonly stock: string
  readonly size: Size
  readonly count: number
  /** Whether it may be turned a quarter: a pattern with a top may not. */
  readonly turns: boolean
  /** Along which of its sides the fibres must run; undefined when it does not matter. */
  readonly grain?: Along
}

/** Sheets of one size of a stock. */
export interface OfferedSheet {
  readonly stock: string
  readonly size: Size
  /** Of one sheet, in the class's money. */
  readonly price?: Fraction
  /** Sheets that are there already and cost nothing. */
  readonly have?: number
  /** Sheets to be had at most, with those; undefined for as many as are wanted. */
  readonly limit?: number
  /** What is left of another sheet: used before new ones, and not counted as a sheet. */
  readonly offcut?: boolean
  /** Along which side the fibres run, if that is known. */
  readonly grain?: Along
  /** Whether its pattern has a top, so that nothing cut from it is turned. */
  readonly upright?: boolean
  /** What is cut off its edges before anything else, such as a deckle. */
  readonly trim?: Partial<Readonly<Record<Edge, Length>>>
}

export interface CuttingOptions {
  /** What is lost at every cut; nothing with a blade. */
  readonly gap?: Length
  /** Of the sizes in the words of `short`. */
  readonly unit?: Unit
  /** Work that may be done for each stock, in millions of steps: the same amount gives the same plan everywhere. */
  readonly effort?: number
  /** Hears how far it is. When it returns a promise, that is waited for, so that others get a turn. */
  readonly progress?: (progress: Progress) => void | Promise<void>
  /** Ends the search; the best plan up to then is the answer. */
  readonly signal?: Pick<AbortSignal, 'aborted'>
}

/** How the plan of one stock comes along. */
export interface Progress {
  readonly stock: string
  /** Sheets of the best plan so far, or what stands for them when sheets are weighed; infinite when there is none. */
  readonly used: number
  readonly lowerBound: number
  /** How much of the work that may be done is done, 0 to 1. */
  readonly spent: number
}

/** What is cut from which sheets, and what cannot be. */
export interface CuttingPlan {
  readonly plans: readonly SheetPlan[]
  readonly short: readonly ShortPiece[]
}

/** All sheets of one size of a stock. */
export interface SheetPlan {
  readonly stock: string
  readonly sheet: OfferedSheet
  readonly used: number
  /** With the other sizes of the stock as planned, fewer of this one would not do. */
  readonly lowerBound: number
  /**
   * Whether no plan of this stock takes fewer sheets that count, nor costs less with as many. How many offcuts are used
   * is not part of it.
   */
  readonly proven: boolean
  readonly layouts: readonly Layout[]
}

/** How some sheets are cut, all alike. */
export interface Layout {
  readonly times: number
  readonly placed: readonly PlacedPiece[]
  /** In the order in which the trimmer makes them. */
  readonly cuts: readonly TrimmerCut[]
}

/** A piece where it lies, from the sheet's lower left corner; width and height as it lies. */
export interface PlacedPiece extends Size {
  readonly piece: string
  readonly lesson: string
  readonly x: Length
  readonly y: Length
  readonly turned: boolean
}

/** A cut from edge to edge of what is in hand. */
export interface TrimmerCut {
  /** `width`: an upright cut, so far from the sheet's left edge; `height`: a level one, from its lower edge. */
  readonly across: Along
  /** Where the part at the stop ends; the knife's gap is beyond. */
  readonly at: Length
  readonly from: Length
  readonly to: Length
  /** The edge of what is in hand that is held against the stop. */
  readonly against: Edge
  /** How far the stop is set from the knife. */
  readonly set: Length
}

/** Pieces that cannot be cut. */
export interface ShortPiece {
  readonly stock: string
  readonly piece: string
  readonly lesson: string
  readonly count: number
  readonly reason: ShortReason
  /** The reason and what would help, in English. */
  readonly why: string
  readonly suggestion: string
}

/** Why pieces cannot be cut; sizes are those of the piece, or of the sheet to get more of. */
export type ShortReason =
  | { readonly kind: 'no sheet'; readonly size: Size }
  /** `trimmed`: something is cut off the edges of a sheet first. */
  | { readonly kind: 'too large'; readonly size: Size; readonly trimmed: boolean }
  | { readonly kind: 'only turned'; readonly size: Size }
  /** `across`: wherever it fits, the fibres run the other way. */
  | { readonly kind: 'fibres'; readonly along: Along; readonly across: boolean }
  /** `more`: how many more sheets would do. */
  | {
      readonly kind: 'too little'
      readonly count: number
      readonly more?: { readonly sheets: number; readonly size: Size }
    }
