import { fieldsOf, type Reading, report } from '../../card/reading.ts'
import type { Entry } from '../../card/yaml.ts'
import { checkSaleKeys, countIn, lengthIn, moneyIn } from './amounts.ts'
import type { SupplyOffer } from './class-file.ts'

const keys = ['roll', 'pack', 'price', 'have'] as const
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
  const roll = lengthIn(reading, fields.get('roll')?.value, 'roll')
  const pack = countIn(reading, fields.get('pack')?.value, 'pack', 1)
  const price = moneyIn(reading, fields.get('price')?.value)
  if (roll !== undefined && pack !== undefined)
    report(
      reading,
      'value',
      fields.get('pack')?.keyPlace ?? place,
      'It is sold by the roll or by the pack, not both',
      'Leave one of the two out',
    )
  const have = haveOf(reading, fields.get('have')?.value)
  return {
    place,
    ...(roll?.gt(0)
      ? { sold: { kind: 'roll', length: roll } }
      : pack !== undefined && { sold: { kind: 'pack', count: pack } }),
    ...(price !== undefined && { price }),
    ...(have && { have }),
  }
}

/** `have: 3` things, or `have: 2 m` of a roll. */
function haveOf(reading: Reading, entry: Entry | undefined): SupplyOffer['have'] {
  if (entry?.kind === 'text' && !/^\s*\d+\s*$/.test(entry.text)) {
    const length = lengthIn(reading, entry, 'have')
    return length && { kind: 'length', length }
  }
  const count = countIn(reading, entry, 'have', 0)
  return count === undefined ? undefined : { kind: 'count', count }
}
