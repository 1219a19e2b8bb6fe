import { areaInWords, countInWords, doseInWords } from '../lesson/amount-words.ts'
import type { Wording } from '../wording/wording.ts'
import type { Quantity } from './needs.ts'
import { stretchText } from './reel.ts'

/** How much, as a list says it. */
export function quantityText(amount: Quantity, wording: Wording): string {
  switch (amount.kind) {
    case 'count':
      return countInWords(amount, wording)
    case 'length':
      return stretchText(amount.length, wording)
    case 'area':
      return areaInWords(amount.area, wording)
    case 'dose':
      return doseInWords(amount.dose, wording)
    case 'text':
      return amount.perTable === undefined
        ? amount.text
        : wording.say('kit.per-table', { count: amount.perTable })
  }
}
