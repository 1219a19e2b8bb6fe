import { formatSize } from '../../length/format.ts'
import { numberIn, type Unit } from '../../length/length.ts'
import { eachTable, supplyTable } from '../kit-tables.ts'
import { quantityCells } from '../quantity-cells.ts'
import { money, number, type Table, type TableCell, text, withoutEmpty } from '../table.ts'
import type { Purchase } from './buying.ts'
import type { ClassKit } from './class-kit.ts'
import { soldAs } from './class-kit-listing.ts'
import { moneyNumber } from './money-text.ts'

/** The lists of a class as tables for a spreadsheet: what to buy and what it costs, each kit, the tables, the tutor. */
export const classKitTables = (kit: ClassKit): Table[] =>
  withoutEmpty([
    buyTable(kit),
    costTable(kit),
    eachTable(
      kit.lessons.map((one) => one.kit),
      kit.title,
    ),
    supplyTable('On the tables', kit.shared, kit.unit, kit.title),
    supplyTable('For the tutor', kit.tutor, kit.unit, kit.title),
  ])

function buyTable({ buy, unit, title, currency }: ClassKit): Table {
  return {
    name: 'To buy',
    title: `To buy: ${title}`,
    columns: [
      text('item'),
      text('sheet'),
      number(`width, ${unit}`),
      number(`height, ${unit}`),
      number('needed'),
      number('there'),
      text('unit'),
      text('as written'),
      number('buy'),
      text('sold as'),
      money('cost'),
    ],
    rows: buy.map((line) => buyCells(line, unit)),
    currency,
  }
}

function buyCells(line: Purchase, unit: Unit): TableCell[] {
  const { item, sheet, need, have, count, cost } = line
  const [needed, measure, written] = quantityCells(need, unit)
  return [
    item,
    sheet && `${formatSize(sheet.size, unit)}${sheet.offcut ? ', offcut' : ''}`,
    sheet && numberIn(sheet.size.width, unit),
    sheet && numberIn(sheet.size.height, unit),
    needed,
    need.kind === have.kind ? quantityCells(have, unit)[0] : undefined,
    sheet ? 'sheets' : measure,
    written,
    count,
    soldAs(line, unit),
    // As exact as the prices are, so that the column adds up to the sum.
    cost?.valueOf(),
  ]
}

/** The sums, if anything has a price. */
const costTable = ({ buy, total, aHead, people, currency, title }: ClassKit): Table => ({
  name: 'Cost',
  title: `Cost: ${title}`,
  columns: [text('what'), money('amount')],
  rows: buy.some(({ cost }) => cost !== undefined)
    ? [
        ['in all', total.valueOf()],
        [`a head, for ${people}`, moneyNumber(aHead)],
      ]
    : [],
  currency,
})
