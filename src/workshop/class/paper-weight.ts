import Fraction from 'fraction.js'
import { areaOf } from '../../length/area.ts'
import type { Size } from '../../length/length.ts'
import type { Purchase } from './buying.ts'
import type { ClassFile } from './class-file.ts'
import type { Taught } from './taught.ts'
import { toCut } from './to-cut.ts'

/** What paper weighs, exactly; pieces count as the rectangles that they are cut to. */
export interface PaperWeight {
  readonly stocks: readonly WeighedStock[]
  /** In the order of the lessons: grams of paper in one kit, the mean where people choose. */
  readonly perKit: readonly { readonly lesson: string; readonly grams: Fraction }[]
  /** Stocks of which neither the class file nor a lesson says the weight. They are not in the sums. */
  readonly unknown: readonly string[]
}

export interface WeighedStock {
  readonly stock: string
  /** Grams to the square metre. */
  readonly gsm: Fraction
  /** Grams of all pieces in all kits. */
  readonly pieces: Fraction
  /** Grams of the whole sheets that they are cut from. */
  readonly sheets: Fraction
}

/**
 * Grams of `count` sheets of one size: area in square metres × grams to the square metre. So ISO 536 defines grammage
 * (from memory).
 */
export const gramsOf = (size: Size, gsm: Fraction, count = 1): Fraction =>
  areaOf(size).div(1_000_000).mul(gsm).mul(count)

/**
 * What the paper of a class weighs.
 *
 * @param sheets as the cutting plans use them.
 */
export function paperWeight(
  file: Pick<ClassFile, 'sheets'>,
  lessons: readonly Taught[],
  sheets: readonly Purchase[],
): PaperWeight {
  const weights = weightsOf(file, lessons)
  const all = toCut(lessons)
  const stocks = [...all].flatMap(([stock, pieces]): WeighedStock[] => {
    const gsm = weights.get(stock)
    if (!gsm) return []
    const used = sheets.filter(({ item, sheet }) => item === stock && sheet)
    return [
      {
        stock,
        gsm,
        pieces: total(pieces.map(({ size, count }) => gramsOf(size, gsm, count))),
        sheets: total(
          used.map(({ sheet, need }) =>
            sheet && need.kind === 'count' ? gramsOf(sheet.size, gsm, need.count) : new Fraction(0),
          ),
        ),
      },
    ]
  })
  const perKit = lessons.map((taught) => {
    const grams = [...toCut([taught])].flatMap(([stock, pieces]) =>
      pieces.map(({ size, count }) => gramsOf(size, weights.get(stock) ?? new Fraction(0), count)),
    )
    return { lesson: taught.lesson.frontMatter.title, grams: total(grams).div(taught.kits) }
  })
  return { stocks, perKit, unknown: [...all.keys()].filter((stock) => !weights.has(stock)) }
}

/** Grams to the square metre of each stock: the class file knows the paper that is bought, and then the lesson. */
function weightsOf({ sheets }: Pick<ClassFile, 'sheets'>, lessons: readonly Taught[]): Map<string, Fraction> {
  const weights = new Map<string, Fraction>()
  const note = (stock: string, gsm: Fraction | undefined): void => {
    if (gsm && !weights.has(stock)) weights.set(stock, gsm)
  }
  for (const [stock, offers] of sheets) for (const { weight } of offers) note(stock, weight)
  for (const { card } of lessons.flatMap(({ lesson }) => lesson.cards))
    for (const { stock } of [...card.structure.pieces, ...(card.envelope?.structure.pieces ?? [])])
      note(stock.name, stock.gsm)
  return weights
}

const total = (grams: readonly Fraction[]): Fraction =>
  grams.reduce((sum, one) => sum.add(one), new Fraction(0))
