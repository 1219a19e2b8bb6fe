import type { Wording } from '../../wording/wording.ts'
import type { ShortReason } from './cutting.ts'

/**
 * Why pieces cannot be cut, and what would help, as two sentences without a full stop.
 *
 * @param stock as the reader knows it.
 */
export function shortWords(
  reason: ShortReason,
  stock: string,
  { say, size }: Wording,
): { readonly why: string; readonly suggestion: string } {
  switch (reason.kind) {
    case 'no sheet':
      return {
        why: say('sheets.no-sheet', { stock }),
        suggestion: say('sheets.list-sheets', { size: size(reason.size) }),
      }
    case 'too large':
      return {
        why: say('sheets.too-large', {
          stock,
          size: size(reason.size),
          trimmed: reason.trimmed ? 'yes' : 'no',
        }),
        suggestion: say('sheets.get-larger', { size: size(reason.size) }),
      }
    case 'only turned':
      return {
        why: say('sheets.only-turned', { stock, size: size(reason.size) }),
        suggestion: say('sheets.get-larger-or-without', { size: size(reason.size) }),
      }
    case 'fibres':
      return {
        why: say('sheets.fibres', { stock, along: reason.along, across: reason.across ? 'yes' : 'no' }),
        suggestion: say('sheets.get-other-fibres'),
      }
    case 'too little':
      return {
        why: say('sheets.too-little', { stock, count: reason.count }),
        suggestion: reason.more
          ? say('sheets.get-more', { sheets: reason.more.sheets, size: size(reason.more.size) })
          : say('sheets.get-new'),
      }
  }
}
