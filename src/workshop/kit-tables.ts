import { numberIn, type Size } from '../length/length.ts'
import type { Wording } from '../wording/wording.ts'
import type { Kit } from './kit.ts'
import { ruleText } from './kit-rule.ts'
import type { KitSupply } from './kit-supply.ts'
import { quantityCells, quantityColumns } from './quantity-cells.ts'
import { number, type Table, type TableCell, type TableColumn, text, withoutEmpty } from './table.ts'
import { unitWords } from './unit-words.ts'

/** A kit list as tables for a spreadsheet. */
export function kitTables(kit: Kit): Table[] {
  const { wording, lesson } = kit
  const { say, name } = wording
  return withoutEmpty([
    eachTable([kit], lesson, wording),
    supplyTable(say('kit.on-the-tables'), kit.shared, wording, lesson),
    supplyTable(say('kit.for-the-tutor'), kit.tutor, wording, lesson),
    {
      ...named(say('kit.to-cut'), lesson, wording),
      columns: [
        text(say('kit.piece')),
        text(say('kit.card')),
        number(say('kit.number')),
        ...sizeColumns(wording),
        text(say('kit.stock')),
      ],
      rows: kit.stocks.flatMap(({ stock, pieces }) =>
        pieces.map(({ item, card, count, size }) => [
          name(item),
          card && name(card),
          count,
          ...sizeCells(size, wording),
          name(stock),
        ]),
      ),
    },
    {
      ...named(say('kit.to-have-ready'), lesson, wording),
      columns: [text(say('kit.item')), ...quantityColumns(say('kit.needed'), wording)],
      rows: kit.buy.map(({ item, need }) => [item, ...quantityCells(need, wording)]),
    },
  ])
}

/** What a table is called, and the line over it: `To cut: Harbour lights`. */
export const named = (table: string, title: string, { say }: Wording): Pick<Table, 'name' | 'title'> => ({
  name: table,
  title: say('kit.table-title', { table, title }),
})

/** What one kit of each lesson holds. */
export function eachTable(
  kits: readonly Pick<Kit, 'lesson' | 'each'>[],
  title: string,
  wording: Wording,
): Table {
  const { say } = wording
  const unit = unitWords(wording)
  return {
    name: say('kit.each-kit'),
    title: say('kit.table-title', { table: say('kit.in-each-kit'), title }),
    columns: [
      text(say('kit.lesson')),
      text(say('kit.item')),
      text(say('kit.card')),
      number(say('kit.number')),
      number(say('kit.width-in', { unit })),
      number(say('kit.height-in', { unit })),
      ...quantityColumns(say('kit.amount'), wording),
      text(say('kit.stock')),
    ],
    rows: kits.flatMap(({ lesson, each }) => each.map((entry) => [lesson, ...eachCells(entry, wording)])),
  }
}

function eachCells(entry: Kit['each'][number], wording: Wording): TableCell[] {
  if (entry.kind === 'supply') {
    const { item, amount } = entry
    return amount.kind === 'count' && amount.of === undefined
      ? [item, undefined, amount.count, ...nothing(6)]
      : [item, ...nothing(4), ...quantityCells(amount, wording), undefined]
  }
  const { card, count } = entry
  const first = [wording.name(entry.item), card && wording.name(card), count]
  if (entry.kind === 'letters')
    return [...first, ...nothing(4), wording.say('kit.letters', { letters: entry.letters }), undefined]
  const [width, height, written] = sizeCells(entry.size, wording)
  return [...first, width, height, ...nothing(2), written, wording.name(entry.stock)]
}

/** Supplies with the rules that they are worked out by. */
export const supplyTable = (
  name: string,
  list: readonly KitSupply[],
  wording: Wording,
  title: string,
): Table => ({
  ...named(name, title, wording),
  columns: [
    text(wording.say('kit.item')),
    ...quantityColumns(wording.say('kit.amount'), wording),
    text(wording.say('kit.rule')),
  ],
  rows: list.map(({ item, amount, rule }) => [
    item,
    ...quantityCells(amount, wording),
    rule && ruleText(rule, wording),
  ]),
})

/** Width and height as numbers, and together as a reader of the list sees them. */
export function sizeColumns(wording: Wording): TableColumn[] {
  const unit = unitWords(wording)
  return [
    number(wording.say('kit.width-in', { unit })),
    number(wording.say('kit.height-in', { unit })),
    text(wording.say('kit.as-written')),
  ]
}

export const sizeCells = (size: Size, wording: Wording): TableCell[] => [
  numberIn(size.width, wording.unit),
  numberIn(size.height, wording.unit),
  wording.size(size),
]

const nothing = (n: number): undefined[] => Array.from({ length: n }, () => undefined)
