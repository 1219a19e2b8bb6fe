import { listOf } from '../length/finding.ts'
import { type Length, larger, plus, type Size, smaller, times } from '../length/length.ts'
import type { Envelope } from './card.ts'
import { type Fit, snuggest } from './envelopes/fits.ts'
import { fullName, type Series } from './envelopes/standard.ts'
import { figuresFrom, letterPosts } from './post/countries.ts'
import { type Classed, classify, type Item } from './post/rules.ts'

/** How a card posts in one country. */
export interface Posting extends Classed {
  readonly country: string
  readonly key: string
  /** What it is posted in: its own envelope, a standard one by its name, or none. */
  readonly inside: string
  /** When the country's figures were published or read. */
  readonly asOf: string
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
    const { country, key, asOf, shops } = post
    const { size, inside, sheets } = wrapped(input, shops)
    const thick = plus(input.thickness, times(input.paper, sheets))
    return { country, key, asOf, inside, ...classify(post, itemOf(size, thick), sheets === 0) }
  })

function wrapped({ closed, envelope, fits }: PostInput, shops: Series) {
  if (envelope) return { size: envelope.outside, inside: 'its own envelope', sheets: sheetsDeep }
  const fit = snuggest(fits, shops).at(-1) ?? fits[0]
  return fit
    ? { size: fit.envelope.size, inside: fullName(fit.envelope), sheets: sheetsDeep }
    : { size: closed, inside: 'no envelope', sheets: 0 }
}

const itemOf = ({ width, height }: Size, thick: Length): Item => ({
  long: larger(width, height),
  high: smaller(width, height),
  thick,
})

/** `large letter (6 mm thick, at most 5 mm), up to 750 g`. */
export function postingText({ name, why, weight }: Posting): string {
  const because = why.length > 0 ? ` (${why.join('; ')})` : ''
  return `${name}${because}${weight === undefined ? '' : `, up to ${weight}`}`
}

/** What to say with figures that change. */
export const askTheCarrier = (asOf: string): string => `figures: ${asOf}; ask the carrier`

/** All countries in a line. */
export const postText = (all: readonly Posting[]): string =>
  `${listOf(all.map(({ country, name }) => `${country}: ${name}`))} (${askTheCarrier(figuresFrom)})`
