import type Fraction from 'fraction.js'
import type { PaperWeight } from './paper-weight.ts'

/** What the paper weighs, for other programs: in grams, to a tenth. */
export interface WeightJson {
  readonly stocks: readonly {
    readonly stock: string
    readonly gsm: number
    readonly pieces: number
    readonly sheets: number
  }[]
  readonly perKit: readonly { readonly lesson: string; readonly grams: number }[]
  /** Stocks whose weight nobody says; they are in no sum. */
  readonly unknown: readonly string[]
}

export const weightJson = ({ stocks, perKit, unknown }: PaperWeight): WeightJson => ({
  stocks: stocks.map(({ stock, gsm, pieces, sheets }) => ({
    stock,
    gsm: tenth(gsm),
    pieces: tenth(pieces),
    sheets: tenth(sheets),
  })),
  perKit: perKit.map(({ lesson, grams }) => ({ lesson, grams: tenth(grams) })),
  unknown,
})

const tenth = (x: Fraction): number => x.round(1).valueOf()
