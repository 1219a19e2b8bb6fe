import { hingesOf } from '../../card/scores.ts'
import type { Wording } from '../../wording/wording.ts'
import type { Offered } from './offered.ts'
import type { Wanted } from './wanted.ts'

/** `::figure[The base, scored]{show=flat of=base}`: what a teacher pastes below a step. */
export const directiveOf = ({ show, of, caption }: Pick<Offered, 'show' | 'of' | 'caption'>): string =>
  `::figure[${escaped(caption)}]{show=${show}${of === undefined ? '' : ` of=${quoted(of)}`}}`

/** What stands below a figure, in the language of the lesson. */
export function captionOf(
  { show, card: { card }, of = '' }: Pick<Wanted, 'show' | 'card' | 'of'>,
  { say, name }: Wording,
): string {
  // `nest 1` needs no article.
  const piece = capital(/\d$/.test(of) ? name(of) : say('figures.the-piece', { piece: name(of) }))
  switch (show) {
    case 'flat':
      return say('figures.caption-flat', {
        piece,
        scored: hingesOf(card.structure, of).length > 0 ? 'yes' : 'no',
      })
    case 'place':
      return say('figures.caption-place', { piece })
    case 'folding':
      return say('figures.caption-folding')
    case 'lettering':
      return say('figures.caption-lettering')
    case 'envelope':
      return say('figures.caption-envelope')
    case 'closed':
      return say('figures.caption-shut')
    default:
      return say('figures.caption-standing')
  }
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)

/** A caption as Markdown that reads as these very words. */
const escaped = (text: string): string => text.replace(/[\\`*_[\]{}<>&:~|#!]/g, '\\$&')

/** A value in quotation marks where it needs them. */
function quoted(text: string): string {
  if (/^[\p{L}\p{N}][\p{L}\p{N}.-]*$/u.test(text)) return text
  return `"${text.replaceAll('&', '&amp;').replaceAll('"', '&quot;')}"`
}
