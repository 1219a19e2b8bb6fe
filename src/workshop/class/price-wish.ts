import type Fraction from 'fraction.js'
import type { Place } from '../../length/finding.ts'
import type { Money } from './money.ts'

/** Something that is paid for besides paper and supplies. */
export interface Fee {
  readonly name: string
  readonly amount: Money
}

/** What the class file says of the price of a class. */
export interface PriceWish {
  readonly place: Place
  /** Paid once for the class, such as the room and the teaching. */
  readonly fees: readonly Fee[]
  /** Paid for everybody who comes, such as tea. */
  readonly each: readonly Fee[]
  /** The part of the price that is to be left when all is paid: from 0 to less than 1. */
  readonly margin: Fraction
  /** The price goes up to a multiple of this. */
  readonly step: Money
  /** How many of those who come pay. */
  readonly paying: number
}
