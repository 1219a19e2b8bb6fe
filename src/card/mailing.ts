import type { Length, Size } from '../length/length.ts'
import type { Wording } from '../wording/wording.ts'
import type { Envelope } from './card.ts'
import { type Fit, standardFits } from './envelopes/fits.ts'
import { fitsWords } from './envelopes/words.ts'
import { letterPosts } from './post/countries.ts'
import { postingWords, postWords } from './post/posting-words.ts'
import { type Posting, postings } from './post.ts'
import type { Cell, Scope } from './scope.ts'

/** How a shut card goes on its way. */
export interface Mailing {
  /** The standard envelopes that take it, the smallest first. */
  readonly fits: readonly Fit[]
  /** How it posts in each country that is known. */
  readonly post: readonly Posting[]
}

/** The cells that say what is posted. */
export interface Shut {
  readonly closed: Cell<Size>
  readonly thickness: Cell<Length>
  /** The envelope made for it, if any. */
  readonly envelope: Cell<Envelope> | undefined
  /** Thickness of ordinary envelope paper. */
  readonly paper: Length
}

/** Works out how a card is mailed, and defines `card.fits`, `card.posts`, and `card.posts.uk` and so on. */
export function mailingCell(
  scope: Scope,
  { closed, thickness, envelope, paper }: Shut,
  wording: Wording,
): Cell<Mailing> {
  const cell = scope.cell('card.posts', (): Mailing => {
    const made = envelope?.()
    const shut = { closed: closed(), thickness: thickness() }
    const fits = standardFits(shut.closed, shut.thickness)
    return { fits, post: postings({ ...shut, fits, envelope: made, paper: made?.stock.caliper ?? paper }) }
  })
  const define = (path: string, text: (mailing: Mailing) => string): void =>
    scope.define(path, () => ({ kind: 'text', value: text(cell()) }))
  define('card.fits', ({ fits }) => fitsWords(fits, wording))
  define('card.posts', ({ post }) => postWords(post, wording))
  for (const { key } of letterPosts)
    define(`card.posts.${key}`, ({ post }) => {
      const posting = post.find((one) => one.key === key)
      return posting ? postingWords(posting, wording) : ''
    })
  return cell
}
