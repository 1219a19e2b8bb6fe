import { type Fit, snuggest } from '../card/envelopes/fits.ts'
import type { Series } from '../card/envelopes/standard.ts'
import { envelopeWords } from '../card/envelopes/words.ts'
import type { Mailing } from '../card/mailing.ts'
import { classWords } from '../card/post/posting-words.ts'
import { dateWords, missWords } from '../card/post/words.ts'
import type { Posting } from '../card/post.ts'
import { fitInside, usualGrid } from '../length/grid.ts'
import type { Size, Unit } from '../length/length.ts'
import type { Wording } from '../wording/wording.ts'
import { measure, type Section, words } from './listing.ts'

/** Which bought envelopes take the shut card, and how it posts. */
export function mailingSections({ fits, post }: Mailing, wording: Wording): Section[] {
  const { say } = wording
  return [
    {
      heading: say('kit.envelopes-to-buy'),
      columns: [
        words(say('kit.envelope-name')),
        measure(say('kit.size')),
        measure(say('kit.larger-by')),
        words(say('kit.fit')),
      ],
      rows: (['ISO 269', 'US trade'] as const).flatMap((series) =>
        snuggest(fits, series).map((fit) => fitRow(fit, wording.in(unitOf[series]))),
      ),
      note: say('kit.envelopes-note'),
    },
    {
      heading: say('kit.by-post'),
      columns: [
        words(say('kit.where')),
        words(say('kit.in')),
        words(say('kit.posts-as')),
        words(say('kit.up-to')),
        words(say('kit.because')),
        words(say('kit.figures')),
      ],
      rows: post.map((posting) => postRow(posting, wording.in(posting.unit))),
      note: say('kit.post-note'),
    },
  ]
}

/** Bought envelopes are told in the unit in which they are sold. */
const unitOf: Record<Series, Unit> = { 'ISO 269': 'mm', 'US trade': 'in' }

function fitRow({ envelope, room, tight }: Fit, wording: Wording): string[] {
  const grid = usualGrid[wording.unit]
  const mark = ({ width, height }: Size): Size => ({
    width: fitInside(width, grid),
    height: fitInside(height, grid),
  })
  return [
    envelopeWords(envelope, wording),
    wording.size(envelope.size),
    wording.size(mark(room)),
    tight ? wording.say('kit.tight') : '',
  ]
}

function postRow({ key, inside, name, weight = '', why, asOf }: Posting, wording: Wording): string[] {
  const { say } = wording
  return [
    say('kit.country', { country: key }),
    typeof inside === 'string' ? say('kit.posted-in', { inside }) : envelopeWords(inside, wording),
    classWords({ name }, wording),
    weight,
    why.map((miss) => missWords(miss, wording)).join('; '),
    dateWords(asOf, wording),
  ]
}
