import type { Wording } from '../../wording/wording.ts'
import type { Posting } from '../post.ts'
import { figuresFrom } from './countries.ts'
import { dateWords, missWords } from './words.ts'

/** A class of letters has the name that its post gives it; in other languages it is said what that is. */
export const classWords = ({ name }: Pick<Posting, 'name'>, { say }: Pick<Wording, 'say'>): string =>
  say('kit.letter-class', { kind: name.replaceAll(/[ -]/g, '_').replaceAll('ß', 'ss'), name })

/** `large letter (6 mm thick, at most 5 mm), up to 750 g (figures: 2022; ask the carrier)`. */
export function postingWords(posting: Posting, wording: Wording): string {
  const { say } = wording
  const { why, unit, asOf, weight = '' } = posting
  const because = why.map((miss) => missWords(miss, wording.in(unit))).join('; ')
  const said = say('kit.posted', {
    says: because === '' ? (weight === '' ? 'class' : 'weight') : weight === '' ? 'why' : 'both',
    class: classWords(posting, wording),
    why: because,
    weight,
  })
  return say('kit.ask-the-carrier', { posted: said, date: dateWords(asOf, wording) })
}

/** All countries in a line. */
export function postWords(all: readonly Posting[], wording: Wording): string {
  const { say, list } = wording
  const posted = list(
    all.map((posting) =>
      say('kit.posted-where', {
        country: say('kit.country', { country: posting.key }),
        class: classWords(posting, wording),
      }),
    ),
  )
  return say('kit.ask-the-carrier', { posted, date: dateWords(figuresFrom, wording) })
}
