import { type Length, larger, plus, type Size, smaller, times, type Unit } from '../length/length.ts'
import { wordingOf } from '../wording/wording.ts'
import type { Envelope } from './card.ts'
import { type Fit, snuggest } from './envelopes/fits.ts'
import { fullName, type Series, type StandardEnvelope } from './envelopes/standard.ts'
import { letterPosts } from './post/countries.ts'
import { type Classed, classify, type FiguresDate, type Item } from './post/rules.ts'
import { dateWords, missWords } from './post/words.ts'

/** How a card posts in one country. */
export interface Posting extends Classed {
  readonly country: string
  readonly key: string
  /** In which the country's limits are told. */
  readonly unit: Unit
  /** What it is posted in: the envelope made for it, a standard one, or none. */
  readonly inside: 'own' | StandardEnvelope | 'none'
  readonly asOf: FiguresDate
}

export interface PostInput {
  readonly closed: Size
  /** Of the shut card. */
  readonly thickness: Length
  /** Made for it, if any. */
  readonly envelope: Envelope | undefined
  readonly fits: readonly Fit[]
  /** Of one sheet of envelope paper. */
  readonly paper: Length
}

/** Where an envelope is thickest its front, two side flaps that lap, the back and the top flap lie on one another. */
const sheetsDeep = 5

/**
 * How a card posts in each country that is known: in the envelope made for it; otherwise in the smallest standard one
 * that the country's shops have, or that fits at all; otherwise as it is.
 */
export const postings = (input: PostInput): Posting[] =>
  letterPosts.map((post) => {
    const { country, key, unit, asOf, shops } = post
    const { size, inside, sheets } = wrapped(input, shops)
    const thick = plus(input.thickness, times(input.paper, sheets))
    return { country, key, unit, asOf, inside, ...classify(post, itemOf(size, thick), sheets === 0) }
  })

function wrapped(
  { closed, envelope, fits }: PostInput,
  shops: Series,
): { size: Size; inside: Posting['inside']; sheets: number } {
  if (envelope) return { size: envelope.outside, inside: 'own', sheets: sheetsDeep }
  const fit = snuggest(fits, shops).at(-1) ?? fits[0]
  return fit
    ? { size: fit.envelope.size, inside: fit.envelope, sheets: sheetsDeep }
    : { size: closed, inside: 'none', sheets: 0 }
}

const itemOf = ({ width, height }: Size, thick: Length): Item => ({
  long: larger(width, height),
  high: smaller(width, height),
  thick,
})

/** In English, as names and programs have it: why it is not in the first class, and in what it is posted. */
export const whyText = ({ why, unit }: Posting): string[] =>
  why.map((miss) => missWords(miss, wordingOf('en-GB', unit)))
export const insideText = ({ inside }: Posting): string =>
  inside === 'own' ? 'its own envelope' : inside === 'none' ? 'no envelope' : fullName(inside)
export const asOfText = (asOf: FiguresDate): string => dateWords(asOf, wordingOf('en-GB', 'mm'))
