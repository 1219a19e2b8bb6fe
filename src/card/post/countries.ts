import Fraction from 'fraction.js'
import { inches, type Length, mm } from '../../length/length.ts'
import type { FiguresDate, Item, LetterPost, Miss } from './rules.ts'

/*
 * Size limits of letters. They change: each has the date of its source, and whoever posts a class set asks the carrier.
 * Limits that no source at hand gives (the smallest letter in the UK, a large letter in the US, a Maxibrief) are left out.
 */

const sized = (unit: (n: number) => Length, long: number, high: number, thick?: number) => ({
  long: unit(long),
  high: unit(high),
  ...(thick !== undefined && { thick: unit(thick) }),
})

const usMost = sized(inches, 11.5, 6.125, 0.25)

/** Large pieces must be a little thicker than small ones: USPS DMM 201 1.2, quoted 2016-08. */
const thinAndLarge = ({ long, high, thick }: Item): Miss | undefined => {
  const least = inches(9, 1000)
  return thick.lt(least) && (long.gt(inches(6)) || high.gt(inches(4.25)))
    ? { kind: 'thin for its size', least }
    : undefined
}

/**
 * USPS Domestic Mail Manual 101, 1.0 (2010-01-04); the same in Quick Service Guide 201 (2015-01-25). The ratio: USPS
 * Publication 25, 1-2.3. `machinable`: letters that sorting machines take.
 */
const us: LetterPost = {
  country: 'US',
  key: 'us',
  unit: 'in',
  shops: 'US trade',
  smallest: { least: sized(inches, 5, 3.5, 0.007), otherwise: 'too small to post' },
  classes: [
    {
      name: 'machinable letter',
      most: usMost,
      ratio: { least: new Fraction(13, 10), most: new Fraction(5, 2) },
      also: thinAndLarge,
      weight: '3 1/2 oz',
    },
    { name: 'nonmachinable letter', most: usMost, weight: '3 1/2 oz' },
  ],
  beyond: 'flat or larger',
  asOf: { from: 2010, year: 2016 },
}

/** Ofcom, what is a large letter; the weights from a paper merchant's list of Royal Mail sizes. Both without date. */
const uk: LetterPost = {
  country: 'UK',
  key: 'uk',
  unit: 'mm',
  shops: 'ISO 269',
  classes: [
    { name: 'letter', most: sized(mm, 240, 165, 5), weight: '100 g' },
    { name: 'large letter', most: sized(mm, 353, 250, 25), weight: '750 g' },
  ],
  beyond: 'parcel',
  asOf: { year: 2026, month: 11, read: true },
}

/** Canada Post, letter weight and size, without date; thicknesses from a mailing house's list of 2022-01-10. */
const canada: LetterPost = {
  country: 'Canada',
  key: 'canada',
  unit: 'mm',
  shops: 'US trade',
  smallest: { least: sized(mm, 140, 90, 0.18), otherwise: 'too small to post' },
  classes: [
    { name: 'standard letter', most: sized(mm, 245, 156, 5), weight: '50 g' },
    { name: 'oversize letter', most: sized(mm, 380, 270, 20), weight: '500 g' },
  ],
  beyond: 'larger than a letter',
  asOf: { year: 2022 },
}

/** Die Zeit, letter formats of Deutsche Post (2025-02-12); the ratio of a Standardbrief from Helpster, without date. */
const germany: LetterPost = {
  country: 'Germany',
  key: 'germany',
  unit: 'mm',
  shops: 'ISO 269',
  smallest: { least: sized(mm, 100, 70), otherwise: 'too small for a letter' },
  classes: [
    {
      name: 'Standardbrief',
      least: sized(mm, 140, 90),
      most: sized(mm, 235, 125, 5),
      ratio: { least: new Fraction(7, 5) },
      weight: '20 g',
    },
    { name: 'Kompaktbrief', most: sized(mm, 235, 125, 10), oblong: true, weight: '50 g' },
    { name: 'Großbrief', most: sized(mm, 353, 250, 20), weight: '500 g' },
  ],
  beyond: 'larger than a Großbrief',
  asOf: { year: 2025, month: 2 },
}

/**
 * Universal Postal Union, Letter-post Regulations Art. 203 as published by Korea Post, without date. Some posts take 125 mm where this has 120.
 */
const abroad: LetterPost = {
  country: 'abroad (UPU)',
  key: 'abroad',
  unit: 'mm',
  shops: 'ISO 269',
  smallest: { least: sized(mm, 140, 90), otherwise: 'too small for a letter' },
  tolerance: mm(2),
  classes: [
    {
      name: 'standardized letter',
      most: sized(mm, 235, 120, 5),
      ratio: { least: new Fraction(7, 5) },
      weight: '20 g',
    },
    { name: 'letter', most: { long: mm(600) }, mostTogether: mm(900) },
  ],
  beyond: 'larger than a letter',
  asOf: { year: 2026, month: 11, read: true },
}

/** The countries whose letters are known here. */
export const letterPosts: readonly LetterPost[] = [us, uk, canada, germany, abroad]

/** From the oldest to the newest of their figures. */
export const figuresFrom: FiguresDate = { from: 2010, year: 2026 }
