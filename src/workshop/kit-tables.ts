import { formatSize } from '../length/format.ts'
import { numberIn, type Size, type Unit } from '../length/length.ts'
import type { Kit } from './kit.ts'
import type { KitSupply } from './kit-supply.ts'
import { quantityCells, quantityColumns } from './quantity-cells.ts'
import { number, type Table, type TableCell, type TableColumn, text, withoutEmpty } from './table.ts'

/** A kit list as tables for a spreadsheet. */
export function kitTables(kit: Kit): Table[] {
  const { unit, lesson } = kit
  return withoutEmpty([
    eachTable([kit], lesson),
    supplyTable('On the tables', kit.shared, unit, lesson),
    supplyTable('For the tutor', kit.tutor, unit, lesson),
    {
      name: 'To cut',
      title: `To cut: ${lesson}`,
      columns: [text('piece'), text('card'), number('number'), ...sizeColumns(unit), text('stock')],
      rows: kit.stocks.flatMap(({ stock, pieces }) =>
        pieces.map(({ item, card, count, size }) => [item, card, count, ...sizeCells(size, unit), stock]),
      ),
    },
    {
      name: 'To have ready',
      title: `To have ready: ${lesson}`,
      columns: [text('item'), ...quantityColumns('needed')],
      rows: kit.buy.map(({ item, need }) => [item, ...quantityCells(need, unit)]),
    },
  ])
}

/** What one kit of each lesson holds. */
export function eachTable(kits: readonly Kit[], title: string): Table {
  const unit = kits[0]?.unit ?? 'in'
  return {
    name: 'Each kit',
    title: `In each kit: ${title}`,
    columns: [
      text('lesson'),
      text('item'),
      text('card'),
      number('number'),
      number(`width, ${unit}`),
      number(`height, ${unit}`),
      ...quantityColumns('amount'),
      text('stock'),
    ],
    rows: kits.flatMap((kit) => kit.each.map((entry) => [kit.lesson, ...eachCells(entry, unit)])),
  }
}

function eachCells(entry: Kit['each'][number], unit: Unit): TableCell[] {
  if (entry.kind === 'supply') {
    const { item, amount } = entry
    return amount.kind === 'count' && amount.of === undefined
      ? [item, undefined, amount.count, ...nothing(6)]
      : [item, ...nothing(4), ...quantityCells(amount, unit), undefined]
  }
  const { item, card, count } = entry
  if (entry.kind === 'letters')
    return [item, card, count, ...nothing(4), `letters ${entry.letters}`, undefined]
  const [width, height, written] = sizeCells(entry.size, unit)
  return [item, card, count, width, height, ...nothing(2), written, entry.stock]
}

/** Supplies with the rules that they are worked out by. */
export const supplyTable = (name: string, list: readonly KitSupply[], unit: Unit, title: string): Table => ({
  name,
  title: `${name}: ${title}`,
  columns: [text('item'), ...quantityColumns('amount'), text('rule')],
  rows: list.map(({ item, amount, rule }) => [item, ...quantityCells(amount, unit), rule]),
})

/** Width and height as numbers, and together as a reader of the list sees them. */
export const sizeColumns = (unit: Unit): TableColumn[] => [
  number(`width, ${unit}`),
  number(`height, ${unit}`),
  text('as written'),
]

export const sizeCells = (size: Size, unit: Unit): TableCell[] => [
  numberIn(size.width, unit),
  numberIn(size.height, unit),
  formatSize(size, unit),
]

const nothing = (n: number): undefined[] => Array.from({ length: n }, () => undefined)
