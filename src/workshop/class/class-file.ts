import type Fraction from 'fraction.js'
import type { Place } from '../../length/finding.ts'
import type { Length, Size, Unit } from '../../length/length.ts'
import type { Edge } from '../cutting/cutting.ts'
import type { Quantity } from '../needs.ts'
import type { Clock } from './clock.ts'
import type { Money } from './money.ts'
import type { PriceWish } from './price-wish.ts'
import type { SeatTable } from './seat-table.ts'
import type { ShopGroup } from './shopping.ts'
import type { Sold } from './sold.ts'

/** What a class file says: who comes, what is made, and what paper and supplies are to be had. */
export interface ClassFile {
  readonly title?: string
  readonly lessons: readonly ClassLesson[]
  readonly people: number
  /** Those who come, if the file names them. */
  readonly guests: readonly Guest[]
  readonly spare: number
  /** BCP 47 language tag of all lists, if it is not that of the first lesson. */
  readonly lang?: string
  /** Of all lists, if it is not that of the first lesson. */
  readonly units?: Unit
  /** What stands before or behind a price, such as `£` or `EUR`. */
  readonly currency: string
  /** By the name of the stock, in the order of the file. */
  readonly sheets: ReadonlyMap<string, readonly SheetOffer[]>
  readonly supplies: ReadonlyMap<string, SupplyOffer>
  /** Where in the shop things stand, in the teacher's own words and order; the rest comes last. */
  readonly shop: readonly ShopGroup[]
  /** What else is paid for, and what is to be earned. */
  readonly price?: PriceWish
  /** Where people sit; none when the file does not say. */
  readonly tables: readonly SeatTable[]
  readonly trimmer: Trimmer
  readonly prepare: Preparation
  readonly times: ClassTimes
  readonly labels: LabelSheet
}

/** Somebody who comes. */
export interface Guest {
  readonly name: string
  /** The stocks that they choose. */
  readonly takes: readonly string[]
  /** The table that they want to sit at. */
  readonly table?: { readonly name: string; readonly place: Place }
  /** What the teacher must know, such as an allergy. */
  readonly note?: string
}

/** A lesson of the class, and what is different in it. */
export interface ClassLesson {
  /** As written, from the folder of the class file. */
  readonly path: string
  readonly place: Place
  /** How many make it, if not everybody does. */
  readonly people?: number
  readonly closed?: Size
  /** For a stock of the lesson, how many take which stock in its place. */
  readonly choices: readonly Choice[]
}

/** `dark blue card: {dark blue card: 8, dark green card: 6}` */
export interface Choice {
  readonly stock: string
  readonly place: Place
  readonly takes: readonly { readonly stock: string; readonly people: number }[]
}

/** One size of sheet of a stock. */
export interface SheetOffer {
  readonly size: Size
  readonly place: Place
  /** Grams to the square metre. */
  readonly weight?: Fraction
  /** Of one sheet. */
  readonly price?: Money
  /** Lie in the cupboard already. */
  readonly have: number
  /** Are to be had at most, with those; undefined for as many as are wanted. */
  readonly limit?: number
  /** Are sold only in packs of so many. */
  readonly pack: number
  /** Which way the fibres run: along the longer side, the shorter one, the width or the height. */
  readonly grain?: 'long' | 'short' | 'width' | 'height'
  /** `upright`: the pattern has a top. */
  readonly direction?: 'upright'
  /** What is cut off its edges before anything else, such as a deckle; nothing where it is not said. */
  readonly trim?: Partial<Readonly<Record<Edge, Length>>>
  /** Whether it is what is left of another sheet: used before new ones. */
  readonly offcut: boolean
}

/** How a supply is sold. */
export interface SupplyOffer {
  readonly place: Place
  /** How much is in a roll, a pack, a sheet or a bottle. */
  readonly sold?: Sold
  /** Of one roll, pack, sheet, bottle or thing. */
  readonly price?: Money
  /** There already: a number of those, or a quantity of what is in them. */
  readonly have?: Quantity
}

/** What the paper is cut with. */
export interface Trimmer {
  /** Lost at every cut: nothing with a blade. */
  readonly gap: Length
  /** How many sheets it cuts at once. */
  readonly stack: number
}

/** What is done before the class, and how long it takes. */
export interface Preparation {
  /** The pieces are cut from their sheets, as the cutting plan says. */
  readonly cut: boolean
  readonly score: boolean
  /** For one of each, in minutes. */
  readonly minutes: PreparationMinutes
  /** Which of these the class file sets. */
  readonly own: ReadonlySet<keyof PreparationMinutes>
}

export interface PreparationMinutes {
  /** A cut of the trimmer, through all sheets that lie in it at once. */
  readonly cut: number
  /** A line scored on one piece. */
  readonly score: number
  /** A line of the packing list put into one kit. */
  readonly item: number
  /** One kit shut and labelled. */
  readonly kit: number
}

/** When the class begins and should end, and what its time goes on besides the steps; in minutes. */
export interface ClassTimes {
  readonly start?: Clock
  readonly end?: Clock
  /** Where that end is written. */
  readonly endPlace?: Place
  /** Before the first step. */
  readonly welcome: number
  /** After the last one. */
  readonly clearing: number
  /** In the order of the clock. */
  readonly breaks: readonly Pause[]
}

export interface Pause {
  readonly at: Clock
  readonly minutes: number
  readonly name: string
  readonly place: Place
}

/** A sheet of labels: the margins on the right and below are those on the left and above. */
export interface LabelSheet {
  readonly columns: number
  readonly rows: number
  readonly left: Length
  readonly top: Length
  /** Between columns, and between rows. */
  readonly across: Length
  readonly down: Length
  readonly place?: Place
}

/** Lessons that each have people of their own, and no more of them than come, are made at the same time. */
export function atOnce({ lessons, people }: Pick<ClassFile, 'lessons' | 'people'>): boolean {
  const own = lessons.map((lesson) => lesson.people ?? people)
  return own.length > 1 && own.reduce((sum, n) => sum + n, 0) <= people
}
