import { fieldsOf, type Reading } from '../../card/reading.ts'
import type { Entry } from '../../card/yaml.ts'
import { textsOf } from '../../lesson/yaml-reading.ts'
import type { ShopGroup } from './shopping.ts'

const cure =
  'Write for example `shop: {paper aisle: [white card, vellum], glue and tape: [double-sided tape]}`'

/** The parts of a shop with what stands there: `shop: {paper aisle: [white card, vellum]}`. */
export const shopIn = (reading: Reading, entry: Entry | undefined): ShopGroup[] =>
  [...fieldsOf(reading, entry, '`shop` wants its parts and what stands there', cure).values()].map(
    ({ key, value }) => ({
      name: key,
      items: textsOf(reading, value, 'The name of a stock or a supply is wanted here', cure).map(
        ({ text, place }) => ({ item: text.trim(), place }),
      ),
    }),
  )
