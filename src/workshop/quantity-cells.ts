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

/** An amount as a number with its unit; things that are counted have none, and `a little` is words alone. */
export function quantityCells(quantity: Quantity, unit: Unit): TableCell[] {
  if (quantity.kind === 'count') return [quantity.count, undefined, undefined]
  const written = say(quantity, unit)
  return quantity.kind === 'length'
    ? [numberIn(quantity.length, unit), unit, written]
    : [undefined, undefined, written]
}
