import type { Finding } from '../../length/finding.ts'
import type { Length, Size, Unit } from '../../length/length.ts'
import type { Candidates } from './candidates.ts'
import type { Layout } from './cutting/cut-from.ts'
import type { WantedEnvelope } from './envelope-limit.ts'
import type { Miss } from './limit.ts'
import type { Supply } from './paper-limit.ts'
import type { PaperPiece } from './paper-pieces.ts'
import type { Use, Whole } from './whole.ts'

/** One size of the card, proven. */
export interface FoundSize {
  readonly closed: Size
  readonly thickness: Length
  /** What `check` would say of this size, though it is no error. */
  readonly warnings: readonly Finding[]
  /** How its pieces are cut from the paper that was given. */
  readonly cutting: readonly StockLayouts[]
  /** What the envelope leaves over the card, the shorter side first. */
  readonly room?: Size
  readonly use?: Use
}

export interface StockLayouts {
  readonly supply: Supply
  readonly layouts: readonly Layout[]
}

/** The size next to one that does, and what is in the way there. */
export interface NextSize {
  readonly closed: Size
  readonly misses: readonly Miss[]
}

/** Sizes that all do, one mark after another. `below` and `above` are missing where the search ends. */
export interface SizeRange {
  readonly from: Size
  readonly to: Size
  readonly below?: NextSize
  readonly above?: NextSize
}

/** What was asked, as it was understood. */
export interface Asked {
  readonly supplies: readonly Supply[]
  readonly envelope?: WantedEnvelope
  readonly whole?: Whole
  readonly lettering: boolean
}

/** The answer to a question asked the other way round. */
export interface Answer {
  readonly lesson: string
  readonly unit: Unit
  readonly grid: Length
  readonly asked: Asked
  /** What was looked through. */
  readonly searched: { readonly from: Size; readonly to: Size; readonly sizes: number } & Pick<
    Candidates,
    'keeps'
  >
  /** The largest size that does all that is asked, or the one that gets the most out of the sheet. */
  readonly found?: FoundSize
  /** One mark larger; missing when nothing was found, or the search ends there. */
  readonly next?: NextSize
  /** The other sizes that use the sheet as well. */
  readonly alike: readonly Size[]
  /** A size of other proportions that uses the sheet whole, where none of the lesson's proportions does. */
  readonly otherShape?: FoundSize
  /** Where the lettering fits, if that was asked. */
  readonly ranges: readonly SizeRange[]
  /** When nothing was found: the smallest size at which the card can be made, or the lesson's own, and why it does not do. */
  readonly nearest?: NextSize
}

export type { PaperPiece }
