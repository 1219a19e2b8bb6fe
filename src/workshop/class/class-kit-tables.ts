import { numberIn } from '../../length/length.ts'
import type { Wording } from '../../wording/wording.ts'
import { ruleText } from '../kit-rule.ts'
import { eachTable, named, supplyTable } from '../kit-tables.ts'
import { likeness } from '../needs.ts'
import { quantityCells, quantityColumns } from '../quantity-cells.ts'
import { money, number, type Table, type TableCell, text, withoutEmpty } from '../table.ts'
import { unitWords } from '../unit-words.ts'
import type { Purchase } from './buying.ts'
import type { ClassKit } from './class-kit.ts'
import { feeWords } from './fee-words.ts'
import { moneyNumber } from './money-text.ts'
import { sheetWords } from './sheet-words.ts'
import { partWords, soldAs } from './shopping-sections.ts'
import { tableWords } from './table-words.ts'

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
      kit.wording,
    ),
    onTables(kit),
    supplyTable(kit.wording.say('kit.for-the-tutor'), kit.tutor, kit.wording, kit.title),
    weightTable(kit),
  ])

/** In the order of the shop. */
function buyTable({ shopping, wording, title, currency }: ClassKit): Table {
  const { say } = wording
  const unit = unitWords(wording)
  return {
    ...named(say('class.to-buy'), title, wording),
    columns: [
      text(say('class.where')),
      text(say('kit.item')),
      text(say('class.sheet')),
      number(say('kit.width-in', { unit })),
      number(say('kit.height-in', { unit })),
      number(say('kit.needed')),
      number(say('class.there')),
      text(say('kit.unit')),
      text(say('kit.as-written')),
      number(say('class.buy')),
      text(say('class.sold-as')),
      money(say('class.cost')),
    ],
    rows: shopping.flatMap(({ name, lines }) =>
      lines.map((line) => [name && partWords(name, wording), ...buyCells(line, wording)]),
    ),
    currency,
  }
}

function buyCells(line: Purchase, wording: Wording): TableCell[] {
  const { item, sheet, need, have, count, cost } = line
  const { unit } = wording
  const [needed, measure, written] = quantityCells(need, wording)
  return [
    sheet ? wording.name(item) : item,
    sheet && sheetWords(sheet, wording),
    sheet && numberIn(sheet.size.width, unit),
    sheet && numberIn(sheet.size.height, unit),
    needed,
    likeness(need) === likeness(have) ? quantityCells(have, wording)[0] : undefined,
    sheet ? wording.say('class.unit-sheets') : measure,
    written,
    count,
    soldAs(line, wording),
    // As exact as the prices are, so that the column adds up to the sum.
    cost?.valueOf(),
  ]
}

/** The sums, if anything has a price: what is paid besides paper and supplies, and what to charge. */
function costTable(kit: ClassKit): Table {
  const { buy, total, aHead, paying, people, price, currency, title, wording } = kit
  const { say } = wording
  const known = price !== undefined || buy.some(({ cost }) => cost !== undefined)
  const besides = price
    ? [
        ...price.wish.fees.map((fee) => [feeWords(fee, wording), fee.amount.valueOf()]),
        ...price.wish.each.map((fee) => [
          say('class.fee-for', { fee: feeWords(fee, wording), people }),
          fee.amount.mul(people).valueOf(),
        ]),
        [say('kit.in-all'), price.cost.valueOf()],
        [say('class.price-to-charge'), price.charge.valueOf()],
        [
          say('class.what-they-bring', { paying: price.wish.paying }),
          price.charge.mul(price.wish.paying).valueOf(),
        ],
        [say('class.left-of-it'), price.left.valueOf()],
      ]
    : []
  return {
    ...named(say('class.cost-table'), title, wording),
    columns: [text(say('kit.what')), money(say('class.amount'))],
    rows: known
      ? [
          [say('class.paper-and-supplies'), total.valueOf()],
          [say('class.that-a-head', { paying }), moneyNumber(aHead)],
          ...besides,
        ]
      : [],
    currency,
  }
}

/** What lies on each table, where the class file has tables, and then what serves all of them. */
function onTables({ tables, forAll, wording, title }: ClassKit): Table {
  const { say } = wording
  const rows = (where: string | undefined, list: ClassKit['forAll']) =>
    list.map(({ item, amount, rule }) => [
      where,
      item,
      ...quantityCells(amount, wording),
      rule && ruleText(rule, wording),
    ])
  return {
    ...named(say('kit.on-the-tables'), title, wording),
    columns: [
      text(say('class.table')),
      text(say('kit.item')),
      ...quantityColumns(say('kit.amount'), wording),
      text(say('kit.rule')),
    ],
    rows: [
      ...tables.flatMap(({ name, kits, shared }) => {
        const table = tableWords(name, wording)
        return [
          ...kits.map(({ lesson, count }) => [table, say('class.kits-of', { lesson }), count]),
          ...rows(table, shared),
        ]
      }),
      ...rows(tables.length > 0 ? say('class.all-tables') : undefined, forAll),
    ],
  }
}

/** Grams, to a tenth. */
const weightTable = ({ weight, title, wording: { say, name } }: ClassKit): Table => ({
  name: say('class.weight'),
  title: say('kit.table-title', { table: say('class.what-paper-weighs'), title }),
  columns: [
    text(say('kit.stock')),
    number(say('class.gsm')),
    number(say('class.in-the-kits-g')),
    number(say('class.as-whole-sheets-g')),
  ],
  rows: weight.stocks.map(({ stock, gsm, pieces, sheets }) => [
    name(stock),
    gsm.round(1).valueOf(),
    pieces.round(1).valueOf(),
    sheets.round(1).valueOf(),
  ]),
})
