import { formatSize } from '../../length/format.ts'
import { numberIn, type Unit } from '../../length/length.ts'
import { eachTable, supplyTable } from '../kit-tables.ts'
import { likeness } from '../needs.ts'
import { quantityCells, quantityColumns } from '../quantity-cells.ts'
import { money, number, type Table, type TableCell, text, withoutEmpty } from '../table.ts'
import type { Purchase } from './buying.ts'
import type { ClassKit } from './class-kit.ts'
import { soldAs } from './class-kit-listing.ts'
import { moneyNumber } from './money-text.ts'

/**
 * The lists of a class as tables for a spreadsheet: what to buy and what it costs, each kit, the tables, the tutor, and
 * what the paper weighs.
 */
export const classKitTables = (kit: ClassKit): Table[] =>
  withoutEmpty([
    buyTable(kit),
    costTable(kit),
    eachTable(
      kit.lessons.map((one) => one.kit),
      kit.title,
    ),
    onTables(kit),
    supplyTable('For the tutor', kit.tutor, kit.unit, kit.title),
    weightTable(kit),
  ])

/** In the order of the shop. */
function buyTable({ shopping, unit, title, currency }: ClassKit): Table {
  return {
    name: 'To buy',
    title: `To buy: ${title}`,
    columns: [
      text('where'),
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
    rows: shopping.flatMap(({ name, lines }) => lines.map((line) => [name, ...buyCells(line, unit)])),
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
    likeness(need) === likeness(have) ? quantityCells(have, unit)[0] : undefined,
    sheet ? 'sheets' : measure,
    written,
    count,
    soldAs(line, unit),
    // As exact as the prices are, so that the column adds up to the sum.
    cost?.valueOf(),
  ]
}

/** The sums, if anything has a price: what is paid besides paper and supplies, and what to charge. */
function costTable({ buy, total, aHead, paying, people, price, currency, title }: ClassKit): Table {
  const known = price !== undefined || buy.some(({ cost }) => cost !== undefined)
  const besides = price
    ? [
        ...price.wish.fees.map(({ name, amount }) => [name, amount.valueOf()]),
        ...price.wish.each.map(({ name, amount }) => [
          `${name}, for ${people}`,
          amount.mul(people).valueOf(),
        ]),
        ['in all', price.cost.valueOf()],
        ['price to charge', price.charge.valueOf()],
        [`what ${price.wish.paying} who pay bring`, price.charge.mul(price.wish.paying).valueOf()],
        ['left of it', price.left.valueOf()],
      ]
    : []
  return {
    name: 'Cost',
    title: `Cost: ${title}`,
    columns: [text('what'), money('amount')],
    rows: known
      ? [
          ['paper and supplies', total.valueOf()],
          [`that a head, for ${paying}`, moneyNumber(aHead)],
          ...besides,
        ]
      : [],
    currency,
  }
}

/** What lies on each table, where the class file has tables, and then what serves all of them. */
function onTables({ tables, forAll, unit, title }: ClassKit): Table {
  const rows = (where: string | undefined, list: ClassKit['forAll']) =>
    list.map(({ item, amount, rule }) => [where, item, ...quantityCells(amount, unit), rule])
  return {
    name: 'On the tables',
    title: `On the tables: ${title}`,
    columns: [text('table'), text('item'), ...quantityColumns('amount'), text('rule')],
    rows: [
      ...tables.flatMap(({ name, kits, shared }) => [
        ...kits.map(({ lesson, count }) => [name, `kits of “${lesson}”`, count]),
        ...rows(name, shared),
      ]),
      ...rows(tables.length > 0 ? 'all' : undefined, forAll),
    ],
  }
}

/** Grams, to a tenth. */
const weightTable = ({ weight, title }: ClassKit): Table => ({
  name: 'Weight',
  title: `What the paper weighs: ${title}`,
  columns: [text('stock'), number('gsm'), number('in the kits, g'), number('as whole sheets, g')],
  rows: weight.stocks.map(({ stock, gsm, pieces, sheets }) => [
    stock,
    gsm.round(1).valueOf(),
    pieces.round(1).valueOf(),
    sheets.round(1).valueOf(),
  ]),
})
