import { areaNumber, areaWords } from '../length/area.ts'
import { numberIn, type Unit } from '../length/length.ts'
import { say } from './kit-listing.ts'
import type { Quantity } from './needs.ts'
import { number, type TableCell, type TableColumn, text } from './table.ts'

/** The columns that `quantityCells` fills: an amount, what it is in, and how a reader of the list sees it. */
export const quantityColumns = (head: string): TableColumn[] => [
  number(head),
  text('unit'),
  text('as written'),
]

/** An amount as a number with its unit; things of their own have none, and `a little` is words alone. */
export function quantityCells(quantity: Quantity, unit: Unit): TableCell[] {
  if (quantity.kind === 'count') return [quantity.count, quantity.of, undefined]
  return [...measured(quantity, unit), say(quantity, unit)]
}

function measured(quantity: Exclude<Quantity, { kind: 'count' }>, unit: Unit): TableCell[] {
  switch (quantity.kind) {
    case 'length':
      return [numberIn(quantity.length, unit), unit]
    case 'area':
      return [areaNumber(quantity.area, unit), areaWords[unit]]
    case 'dose':
      return [quantity.dose.amount.valueOf(), quantity.dose.unit]
    case 'text':
      return [undefined, undefined]
  }
}
