import type { Card } from '../card/card.ts'
import { formatArea } from '../length/area.ts'
import { listOf } from '../length/finding.ts'
import { formatLength } from '../length/format.ts'
import { mustCover } from '../length/grid.ts'
import type { Length, Unit } from '../length/length.ts'
import { countText } from '../lesson/count-text.ts'
import { formatDose } from '../lesson/dose.ts'
import type { Amount, Supplies } from '../lesson/lesson.ts'
import type { Html } from './html-text.ts'
import { measureHtml } from './measure-html.ts'

/** One thing to tick off. */
export interface NeedView {
  readonly item: string
  readonly amount: Html | null
}

/** Things that belong together: by whom they are needed. */
export interface NeedGroup {
  readonly for: 'paper' | 'each' | 'shared' | 'tutor'
  readonly title: string
  readonly items: readonly NeedView[]
}

/** What the groups are called. */
export const needTitles = {
  paper: 'Paper and card',
  each: 'For each card',
  shared: 'Tools to share',
  tutor: 'For the tutor',
} as const

/** Everything that lies on the table before the first cut, in groups that have something in them. */
export function needsView(cards: readonly Card[], supplies: Supplies, unit: Unit, grid: Length): NeedGroup[] {
  const groups = [
    { for: 'paper' as const, items: stocksOf(cards) },
    ...(['each', 'shared', 'tutor'] as const).map((whose) => ({
      for: whose,
      items: supplies[whose].map(({ item, amount }) => ({ item, amount: amountHtml(amount, unit, grid) })),
    })),
  ]
  return groups
    .filter(({ items }) => items.length > 0)
    .map((group) => ({ ...group, title: needTitles[group.for] }))
}

/** Each stock once, with the pieces that are cut from it. */
function stocksOf(cards: readonly Card[]): NeedView[] {
  const stocks = new Map<string, Set<string>>()
  const add = (stock: string, piece: string): void => {
    stocks.set(stock, (stocks.get(stock) ?? new Set()).add(piece))
  }
  for (const { structure, envelope } of cards) {
    for (const piece of structure.pieces) add(piece.stock.name, piece.name)
    if (envelope) add(envelope.stock.name, 'envelope')
  }
  return [...stocks].map(([item, pieces]) => ({ item, amount: measureHtml(listOf([...pieces])) }))
}

const amountHtml = (amount: Amount, unit: Unit, grid: Length): Html | null => {
  const text = amountText(amount, unit, grid)
  return text === '' ? null : measureHtml(text)
}

/** How much of something a card or a class takes, as a list says it; empty where there is nothing to say. */
export function amountText(amount: Amount, unit: Unit, grid: Length): string {
  switch (amount.kind) {
    case 'count':
      return countText(amount)
    case 'area':
      return formatArea(amount.area, unit)
    case 'dose':
      return formatDose(amount.dose)
    case 'length':
      return formatLength(mustCover(amount.length, grid), unit)
    case 'per':
      return `${amount.count} between ${amount.people}`
    case 'per table':
      return `${amount.count} for each table`
    case 'text':
      return amount.text
  }
}
