/**
 * What the page of the fold in motion is told: everything that it draws, as plain data. It is written when the page is
 * made and read by the part of the page that runs in a browser, and by nothing else. Lengths in mm.
 */
export interface MotionTold {
  readonly cards: readonly CardTold[]
}

export interface CardTold {
  readonly name: string
  readonly words: WordsTold
  readonly stocks: readonly StockTold[]
  readonly plates: readonly PlateTold[]
  readonly creases: readonly CreaseTold[]
  /**
   * The moments at which the places are known, in order: from flat (0) to shut (1) and on to standing (2). A card that
   * cannot be followed from the flat sheet starts at 1, one that does not open ends at 1.
   */
  readonly at: readonly number[]
  /**
   * What moves as one, and where it is at each moment: seven whole numbers, place in 1/100 mm and turn in 1/100000,
   * each as what it differs by from the moment before. Seven alone: it never moves.
   */
  readonly groups: readonly (readonly number[])[]
  readonly stops: readonly StopTold[]
  readonly acts: readonly ActTold[]
}

/** How far a card is folded or open, from nothing to all. */
export const shares = ['little', 'quarter', 'less', 'half', 'more', 'most', 'nearly'] as const
export type Share = (typeof shares)[number]

/** What the program of the page says, in the language of the page. */
export interface WordsTold {
  readonly flat: string
  readonly shut: string
  readonly standing: string
  /** `half folded`, by the share; and `half open`. */
  readonly folded: Readonly<Partial<Record<Share, string>>>
  readonly open: Readonly<Partial<Record<Share, string>>>
  readonly stands: string
  readonly isShut: string
  readonly play: string
  readonly pause: string
}

/** A place to stop at, and how the card is looked at there, in degrees: from the left, and from above. */
export interface StopTold {
  readonly at: number
  readonly name: 'flat' | 'shut' | 'standing'
  readonly turn: number
  readonly rise: number
}

/** What a hand does between two moments. */
export interface ActTold {
  readonly from: number
  readonly to: number
  readonly text: string
}

export type Flat = readonly [x: number, y: number]

export interface PlateTold {
  readonly name: string
  readonly stock: number
  /** Of its sheet. */
  readonly caliper: number
  readonly outline: readonly Flat[]
  readonly holes: readonly (readonly Flat[])[]
  /** The parts of its edges that are cut; the others are creases, which are drawn for themselves. */
  readonly cuts: readonly (readonly [Flat, Flat])[]
  /** The base has heavier edges. */
  readonly base: boolean
  readonly letters: readonly LetterTold[]
  /** Two short lines that tell film from paper. */
  readonly glints: readonly (readonly [Flat, Flat])[]
  readonly group: number
  /** Where it is in its group: seven whole numbers as there. */
  readonly held: readonly number[]
  /** The moment from which it is there. */
  readonly joins: number
}

/** A letter on the face: the middle of its foot, and its type size. */
export interface LetterTold {
  readonly text: string
  readonly foot: Flat
  readonly size: number
}

/** A score line between two plates, on both of which it has the same place. */
export interface CreaseTold {
  readonly between: readonly [number, number]
  readonly line: readonly [Flat, Flat]
  readonly fold: 'valley' | 'mountain'
}

/** How a stock looks: as in the figures. */
export interface StockTold {
  readonly tint: string
  /** The same for the back. */
  readonly away: string
  readonly opacity: number
  readonly hatch: HatchTold | null
}

/** Marks in a square that repeats, turned clockwise; its lines run from its upper or its left edge. */
export interface HatchTold {
  readonly tile: number
  readonly turn: number
  readonly colour: string
  readonly width: number
  readonly lines: readonly { readonly level: boolean; readonly at: number }[]
  readonly dots: readonly Flat[]
}
