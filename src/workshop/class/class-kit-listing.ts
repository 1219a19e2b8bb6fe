import { formatLength, formatSize } from '../../length/format.ts'
import type { Length, Unit } from '../../length/length.ts'
import { eachSection, say, supplySection } from '../kit-listing.ts'
import { count, type Listing, measure, type Section, withoutEmptyColumns, words } from '../listing.ts'
import type { Quantity } from '../needs.ts'
import type { Purchase } from './buying.ts'
import type { ClassKit } from './class-kit.ts'
import { moneyText } from './money-text.ts'

/** The lists of a class as tables: each kit of each lesson, the tables, the tutor, and what to buy with its cost. */
export function classKitListing(kit: ClassKit): Listing {
  const { unit, people, spare, lessons } = kit
  const several = lessons.length > 1
  const sections: Section[] = [
    ...lessons.map(({ taught, kit: one }) => ({
      ...eachSection(one, several ? `In each kit of “${one.lesson}”` : 'In each kit'),
      ...choiceNote(taught.taken),
    })),
    supplySection('On the tables', kit.shared, unit),
    supplySection('For the tutor', kit.tutor, unit),
    buySection(kit),
  ]
  return {
    title: `Kit list: ${kit.title}`,
    intro: `For ${people} ${people === 1 ? 'person' : 'people'}${spare > 0 ? ` and ${spare} spare ${spare === 1 ? 'kit' : 'kits'}` : ''}.`,
    sections: sections.filter(({ rows }) => rows.length > 0).map(withoutEmptyColumns),
  }
}

/** `dark blue card: 9 dark blue card, 7 dark green card` */
function choiceNote(taken: ClassKit['lessons'][number]['taught']['taken']): Pick<Section, 'note'> {
  if (taken.size === 0) return {}
  const said = [...taken].map(
    ([stock, takes]) =>
      `${stock}: ${takes.map((take) => `${take.kits} ${take.kits === 1 ? 'kit has' : 'kits have'} ${take.stock}`).join(', ')}`,
  )
  return { note: `${said.join('; ')}.` }
}

function buySection({ buy, unit, currency, total, aHead }: ClassKit): Section {
  const hasPrices = buy.some(({ cost }) => cost !== undefined)
  return {
    heading: 'To buy',
    columns: [
      words('item'),
      measure('needed'),
      measure('there'),
      count('buy'),
      words('sold as'),
      count('cost'),
    ],
    rows: buy.map((line) => [
      line.sheet
        ? `${line.item}, ${formatSize(line.sheet.size, unit)}${line.sheet.offcut ? ', offcut' : ''}`
        : line.item,
      say(line.need, unit),
      isNothing(line.have) ? '' : thereText(line.have, unit),
      line.count === undefined ? '' : String(line.count),
      soldAs(line, unit),
      line.cost === undefined ? '' : moneyText(line.cost, currency),
    ]),
    ...(hasPrices && {
      note: `What has a price costs ${moneyText(total, currency)} in all, ${moneyText(aHead, currency)} a head.`,
    }),
  }
}

const isNothing = (quantity: Quantity): boolean =>
  (quantity.kind === 'count' && quantity.count === 0) ||
  (quantity.kind === 'length' && quantity.length.equals(0))

/** A length that is there was measured off a roll: in metres when that is plain. */
const thereText = (quantity: Quantity, unit: Unit): string =>
  quantity.kind === 'length' ? rollText(quantity.length, unit) : say(quantity, unit)

function rollText(length: Length, unit: Unit): string {
  const metres = length.div(1000)
  return metres.mul(10).d === 1n ? `${metres.valueOf()} m` : formatLength(length, unit)
}

/** `roll of 10 m`, `pack of 100`: rolls as the shop says them. */
export function soldAs({ sold }: Pick<Purchase, 'sold'>, unit: Unit): string {
  if (!sold) return ''
  if (sold.kind === 'pack') return `pack of ${sold.count}`
  return `roll of ${rollText(sold.length, unit)}`
}
