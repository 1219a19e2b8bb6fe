import { formatArea } from '../length/area.ts'
import { formatLength, formatSize } from '../length/format.ts'
import { mustCover } from '../length/grid.ts'
import { inches, mm, over, part, shorter, type Unit } from '../length/length.ts'
import { countText } from '../lesson/count-text.ts'
import { formatDose } from '../lesson/dose.ts'
import type { Kit } from './kit.ts'
import type { KitLetters, KitPiece } from './kit-pieces.ts'
import type { KitSupply } from './kit-supply.ts'
import { count, type Listing, measure, type Section, withoutEmptyColumns, words } from './listing.ts'
import type { Quantity } from './needs.ts'

/** A kit list as tables: in each kit, on the tables, with the tutor, what to cut of each stock, what to buy. */
export function kitListing(kit: Kit): Listing {
  const { unit, people, spare } = kit
  const kits = people + spare
  const sections: Section[] = [
    eachSection(kit, 'In each kit'),
    supplySection('On the tables', kit.shared, unit),
    supplySection('For the tutor', kit.tutor, unit),
    {
      heading: 'To cut',
      columns: [words('piece'), count('count'), measure('width × height'), words('stock')],
      rows: kit.stocks.flatMap(({ stock, pieces }) =>
        pieces.map((p) => [named(p), String(p.count), formatSize(p.size, unit), stock]),
      ),
    },
    {
      heading: 'To have ready',
      columns: [words('item'), measure('in all'), words('or')],
      rows: kit.buy.map(({ item, need }) => [item, say(need, unit), longer(need, unit)]),
    },
  ]
  return {
    title: `Kit list: ${kit.lesson}`,
    intro: `For ${number(people, 'person', 'people')}${spare > 0 ? ` and ${number(spare, 'spare kit', 'spare kits')}` : ''}: ${number(kits, 'kit', 'kits')}.`,
    sections: sections.filter(({ rows }) => rows.length > 0).map(withoutEmptyColumns),
  }
}

/** What one kit holds, as a table. */
export const eachSection = ({ each, unit }: Pick<Kit, 'each' | 'unit'>, heading: string): Section => ({
  heading,
  columns: [words('item'), count('count'), measure('how much'), words('stock')],
  rows: each.map((entry) => eachRow(entry, unit)),
})

/** Supplies with the rules that they are worked out by, as a table. */
export const supplySection = (heading: string, list: readonly KitSupply[], unit: Unit): Section => ({
  heading,
  columns: [words('item'), measure('how much'), words('rule')],
  rows: list.map(({ item, amount, rule }) => [item, say(amount, unit), rule ?? '']),
})

function eachRow(entry: KitPiece | KitLetters | KitSupply, unit: Unit): string[] {
  if (entry.kind === 'piece')
    return [named(entry), String(entry.count), formatSize(entry.size, unit), entry.stock]
  if (entry.kind === 'letters') return [named(entry), String(entry.count), `letters ${entry.letters}`, '']
  const { item, amount } = entry
  return amount.kind === 'count' && amount.of === undefined
    ? [item, String(amount.count), '', '']
    : [item, '', say(amount, unit), '']
}

/** A piece with its card, where the lesson has several: `base (box)`. */
const named = ({ item, card }: { item: string; card?: string }): string => (card ? `${item} (${card})` : item)

/** How much, as a list says it. */
export const say = (amount: Quantity, unit: Unit): string => {
  switch (amount.kind) {
    case 'count':
      return countText(amount)
    case 'length':
      return formatLength(amount.length, unit)
    case 'area':
      return formatArea(amount.area, unit)
    case 'dose':
      return formatDose(amount.dose)
    case 'text':
      return amount.text
  }
}

const number = (n: number, one: string, many: string): string => `${n} ${n === 1 ? one : many}`

/** A long length in the unit that rolls are sold in, rounded up to a tenth so that it is never too little. */
function longer(need: Quantity, unit: Unit): string {
  if (need.kind !== 'length') return ''
  const [name, whole] = unit === 'in' ? ['yd', inches(36)] : ['m', mm(1000)]
  if (shorter(need.length, whole)) return ''
  return `${over(mustCover(need.length, part(whole, 10)), whole).valueOf()} ${name}`
}
