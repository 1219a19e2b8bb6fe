import { hingesOf } from '../../card/scores.ts'
import type { Offered } from './offered.ts'
import type { Wanted } from './wanted.ts'

/** `::figure[The base, scored]{show=flat of=base}`: what a teacher pastes below a step. */
export const directiveOf = ({ show, of, caption }: Pick<Offered, 'show' | 'of' | 'caption'>): string =>
  `::figure[${escaped(caption)}]{show=${show}${of === undefined ? '' : ` of=${quoted(of)}`}}`

/** What stands below a figure. */
export function captionOf({ show, card: { card }, of = '' }: Pick<Wanted, 'show' | 'card' | 'of'>): string {
  // `nest 1` needs no article.
  const name = /\d$/.test(of) ? of : `the ${of}`
  switch (show) {
    case 'flat':
      return `${capital(name)}, ${hingesOf(card.structure, of).length > 0 ? 'scored' : 'cut'}`
    case 'place':
      return `${capital(name)}, in place`
    case 'folding':
      return 'How it is folded'
    case 'lettering':
      return 'Where each letter begins'
    case 'envelope':
      return 'The sheet of the envelope, and how it is folded'
    case 'closed':
      return 'Shut'
    default:
      return 'Finished and standing'
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
