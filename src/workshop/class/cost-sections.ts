import { amount, type Section, words } from '../listing.ts'
import type { ClassKit } from './class-kit.ts'
import { moneyText } from './money-text.ts'
import { priceText } from './price-text.ts'
import type { Fee } from './price-wish.ts'

/** What the class costs, and what to charge for it; nothing where nothing has a price. */
export function costSections(kit: ClassKit): Section[] {
  const { shopping, buy, total, currency, price, people } = kit
  if (!price && !buy.some(({ cost }) => cost !== undefined)) return []
  const say = (money: Fee['amount']): string => moneyText(money, currency)
  const parts = shopping.flatMap(({ name, total: here }) =>
    name === undefined || here.equals(0) ? [] : [[name, say(here)]],
  )
  const besides = price
    ? [
        ...price.wish.fees.map((fee) => [fee.name, say(fee.amount)]),
        ...price.wish.each.map((fee) => [
          `${fee.name}, ${people} × ${say(fee.amount)}`,
          say(fee.amount.mul(people)),
        ]),
        ['in all', say(price.cost)],
      ]
    : []
  return [
    {
      heading: price ? 'What it costs, and what to charge' : 'What it costs',
      columns: [words('what for'), amount('cost')],
      rows: [...parts, ['paper and supplies', say(total)], ...besides],
      note: [headText(kit), ...unpriced(kit), ...(price ? [priceText(price, currency)] : [])].join(' '),
    },
  ]
}

const headText = ({ aHead, spare, currency, paying, people }: ClassKit): string =>
  `Paper and supplies come to ${moneyText(aHead, currency)} a head${paying < people ? ` for the ${paying} who pay` : ''}${spare > 0 ? ', with the spare kits' : ''}.`

/** What is bought and has no price: the sums are too low by it. */
function unpriced({ buy }: ClassKit): string[] {
  const names = buy
    .filter(({ cost, count: n }) => cost === undefined && (n === undefined || n > 0))
    .map(({ item }) => item)
  return names.length > 0 ? [`Without a price, and not in the sums: ${[...new Set(names)].join(', ')}.`] : []
}
