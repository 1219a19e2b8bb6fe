import type { Size } from '../../length/length.ts'
import type { Wording } from '../../wording/wording.ts'

/** `12 × 12 in`, `8 × 6 in, offcut`. */
export function sheetWords(
  { size, offcut }: { readonly size: Size; readonly offcut?: boolean },
  wording: Wording,
): string {
  const said = wording.size(size)
  return offcut ? wording.say('sheets.offcut-sheet', { size: said }) : said
}
