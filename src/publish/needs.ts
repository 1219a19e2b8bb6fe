import type { Card } from '../card/card.ts'
import { mustCover } from '../length/grid.ts'
import type { Length } from '../length/length.ts'
import { areaInWords, countInWords, doseInWords } from '../lesson/amount-words.ts'
import type { Amount, Supplies } from '../lesson/lesson.ts'
import type { Wording } from '../wording/wording.ts'
import type { Html } from './html-text.ts'
import { measureHtml } from './measure-html.ts'

/** One thing to tick off. */
export interface NeedView {
  readonly item: string
  readonly amount: Html | null
  /** Whether the amount is so short that it must not stand on a line alone. */
  readonly brief: boolean
}

/** Things that belong together: by whom they are needed. */
export interface NeedGroup {
  readonly for: 'paper' | 'each' | 'shared' | 'tutor'
  readonly title: string
  readonly items: readonly NeedView[]
}

/** What a group is called. */
export const needTitle = (whose: NeedGroup['for'], wording: Wording): string =>
  wording.say('handout.need', { whose })

/** Everything that lies on the table before the first cut, in groups that have something in them. */
export function needsView(
  cards: readonly Card[],
  supplies: Supplies,
  wording: Wording,
  grid: Length,
): NeedGroup[] {
  const groups = [
    { for: 'paper' as const, items: stocksOf(cards, wording) },
    ...(['each', 'shared', 'tutor'] as const).map((whose) => ({
      for: whose,
      items: supplies[whose].map(({ item, amount }): NeedView => {
        const text = amountText(amount, wording, grid)
        return { item, amount: text === '' ? null : measureHtml(text), brief: text.length <= 3 }
      }),
    })),
  ]
  return groups
    .filter(({ items }) => items.length > 0)
    .map((group) => ({ ...group, title: needTitle(group.for, wording) }))
}

/** Each stock once, with the pieces that are cut from it. */
function stocksOf(cards: readonly Card[], wording: Wording): NeedView[] {
  const stocks = new Map<string, Set<string>>()
  const add = (stock: string, piece: string): void => {
    stocks.set(stock, (stocks.get(stock) ?? new Set()).add(wording.name(piece)))
  }
  for (const { structure, envelope } of cards) {
    for (const piece of structure.pieces) add(piece.stock.name, piece.name)
    if (envelope) add(envelope.stock.name, 'envelope')
  }
  return [...stocks].map(([stock, pieces]) => ({
    item: wording.name(stock),
    amount: measureHtml(wording.list([...pieces])),
    brief: false,
  }))
}

/** How much of something a card or a class takes, as a list says it; empty where there is nothing to say. */
export function amountText(amount: Amount, wording: Wording, grid: Length): string {
  switch (amount.kind) {
    case 'count':
      return countInWords(amount, wording)
    case 'area':
      return areaInWords(amount.area, wording)
    case 'dose':
      return doseInWords(amount.dose, wording)
    case 'length':
      return wording.length(mustCover(amount.length, grid))
    case 'per':
      return wording.say('handout.between', { count: amount.count, people: amount.people })
    case 'per table':
      return wording.say('handout.per-table', { count: amount.count })
    case 'text':
      return amount.text
  }
}
