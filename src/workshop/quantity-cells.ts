import { areaNumber } from '../length/area.ts'
import { numberIn } from '../length/length.ts'
import type { Wording } from '../wording/wording.ts'
import type { Quantity } from './needs.ts'
import { quantityText } from './quantity-text.ts'
import { number, type TableCell, type TableColumn, text } from './table.ts'
import { unitWords } from './unit-words.ts'

/** The columns that `quantityCells` fills: an amount, what it is in, and how a reader of the list sees it. */
export const quantityColumns = (head: string, { say }: Wording): TableColumn[] => [
  number(head),
  text(say('kit.unit')),
  text(say('kit.as-written')),
]

/** An amount as a number with its unit; things of their own have none, and `a little` is words alone. */
export function quantityCells(quantity: Quantity, wording: Wording): TableCell[] {
  if (quantity.kind === 'count')
    return [
      quantity.count,
      quantity.of === undefined ? undefined : wording.say('kit.counted-unit', { of: quantity.of }),
      undefined,
    ]
  return [...measured(quantity, wording), quantityText(quantity, wording)]
}

function measured(quantity: Exclude<Quantity, { kind: 'count' }>, wording: Wording): TableCell[] {
  const { unit } = wording
  switch (quantity.kind) {
    case 'length':
      return [numberIn(quantity.length, unit), unitWords(wording)]
    case 'area':
      return [areaNumber(quantity.area, unit), wording.say('kit.area-unit', { unit })]
    case 'dose':
      return [quantity.dose.amount.valueOf(), quantity.dose.unit]
    case 'text':
      return [undefined, undefined]
  }
}
