import { amount, type Section, words } from '../listing.ts'
import type { ClassKit } from './class-kit.ts'
import { feeWords } from './fee-words.ts'
import { moneyText } from './money-text.ts'
import { priceText } from './price-text.ts'
import type { Fee } from './price-wish.ts'
import { partWords } from './shopping-sections.ts'

/** What the class costs, and what to charge for it; nothing where nothing has a price. */
export function costSections(kit: ClassKit): Section[] {
  const { shopping, buy, total, currency, price, people, wording } = kit
  if (!price && !buy.some(({ cost }) => cost !== undefined)) return []
  const { say } = wording
  const told = (money: Fee['amount']): string => moneyText(money, currency, wording)
  const parts = shopping.flatMap(({ name, total: here }) =>
    name === undefined || here.equals(0) ? [] : [[partWords(name, wording), told(here)]],
  )
  const besides = price
    ? [
        ...price.wish.fees.map((fee) => [feeWords(fee, wording), told(fee.amount)]),
        ...price.wish.each.map((fee) => [
          say('class.fee-each', { fee: feeWords(fee, wording), people, amount: told(fee.amount) }),
          told(fee.amount.mul(people)),
        ]),
        [say('kit.in-all'), told(price.cost)],
      ]
    : []
  return [
    {
      heading: price ? say('class.costs-and-charge') : say('class.costs'),
      columns: [words(say('class.what-for')), amount(say('class.cost'))],
      rows: [...parts, [say('class.paper-and-supplies'), told(total)], ...besides],
      note: [headText(kit), ...unpriced(kit), ...(price ? [priceText(price, currency, wording)] : [])].join(
        ' ',
      ),
    },
  ]
}

const headText = ({ aHead, spare, currency, paying, people, wording }: ClassKit): string =>
  wording.say('class.a-head', {
    amount: moneyText(aHead, currency, wording),
    // Said only where some do not pay.
    paying: paying < people ? paying : 0,
    spare: spare > 0 ? 'yes' : 'no',
  })

/** What is bought and has no price: the sums are too low by it. */
function unpriced({ buy, wording: { say, name } }: ClassKit): string[] {
  const names = buy
    .filter(({ cost, count: n }) => cost === undefined && (n === undefined || n > 0))
    .map(({ item }) => name(item))
  return names.length > 0 ? [say('class.unpriced', { items: [...new Set(names)].join(', ') })] : []
}
