import { fieldsOf, type Reading, report } from '../../card/reading.ts'
import type { Entry, Fields } from '../../card/yaml.ts'
import { checkSaleKeys, moneyIn } from './amounts.ts'
import type { SupplyOffer } from './class-file.ts'
import { quantityAlone } from './read-quantity.ts'
import { saleKeys, soldIn } from './read-sold.ts'

const keys = [...saleKeys, 'price', 'have'] as const
const example = 'Write for example `double-sided tape: {roll: 10 m, price: 2.20}`'

/** How supplies are sold, by item. */
export function suppliesOffered(reading: Reading, entry: Entry | undefined): Map<string, SupplyOffer> {
  const all = fieldsOf(reading, entry, '`supplies` wants items and how they are sold', example)
  return new Map(
    [...all.values()].map(({ key, keyPlace, value }) => [key, supplyOf(reading, value, keyPlace)]),
  )
}

function supplyOf(reading: Reading, entry: Entry, place: SupplyOffer['place']): SupplyOffer {
  const fields = fieldsOf(reading, entry, 'A supply wants how it is sold', example)
  checkSaleKeys(reading, fields, keys, 'a supply')
  const ways = saleKeys.filter((key) => fields.has(key))
  const sold = ways
    .map((key) => soldIn(reading, fields.get(key)?.value, key))
    .find((one) => one !== undefined)
  tellSecondWay(reading, fields, ways)
  const price = moneyIn(reading, fields.get('price')?.value)
  const have = quantityAlone(reading, fields.get('have')?.value, 'have')
  return { place, ...(sold && { sold }), ...(price !== undefined && { price }), ...(have && { have }) }
}

function tellSecondWay(reading: Reading, fields: Fields, ways: readonly (typeof saleKeys)[number][]): void {
  const [first, second] = ways
  const field = second && fields.get(second)
  if (field)
    report(
      reading,
      'value',
      field.keyPlace,
      `It is sold by the \`${first}\` or by the \`${second}\`, not both`,
      'Leave one of the two out',
    )
}
