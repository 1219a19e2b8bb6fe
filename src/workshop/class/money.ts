import type Fraction from 'fraction.js'

/** Money of no particular land: an exact number of the class file's currency. */
export type Money = Fraction
