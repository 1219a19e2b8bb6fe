import { formatSize } from '../../length/format.ts'
import type { Unit } from '../../length/length.ts'
import { say } from '../kit-listing.ts'
import { amount, count, measure, type Section, words } from '../listing.ts'
import { isNothing, type Purchase } from './buying.ts'
import type { ClassKit } from './class-kit.ts'
import { moneyText } from './money-text.ts'
import { soldText, thereText } from './sold.ts'

/** What to buy, a table for each part of the shop that the class file names, with what it costs there. */
export const buySections = ({ shopping, unit, currency }: ClassKit): Section[] =>
  shopping.map(({ name, lines, total }) => {
    const priced = lines.some(({ cost }) => cost !== undefined)
    const notes = [
      ...(name !== undefined && priced ? [`Here: ${moneyText(total, currency)}.`] : []),
      ...(lines.some(isByArea)
        ? [
            'Sheets of a supply are counted by their area, as if every scrap were used: what must be in one piece wants more.',
          ]
        : []),
    ]
    return {
      heading: name === undefined ? 'To buy' : `To buy: ${name}`,
      columns: [
        words('item'),
        measure('needed'),
        measure('there'),
        count('buy'),
        words('sold as'),
        amount('cost'),
      ],
      rows: lines.map((line) => [
        itemText(line, unit),
        say(line.need, unit),
        isNothing(line.have) ? '' : thereText(line.have, unit),
        line.count === undefined ? '' : String(line.count),
        line.sold ? soldText(line.sold, unit) : '',
        line.cost === undefined ? '' : moneyText(line.cost, currency),
      ]),
      ...(notes.length > 0 && { note: notes.join(' ') }),
    }
  })

const isByArea = ({ sold, count: n }: Purchase): boolean => sold?.kind === 'sheet' && n !== undefined && n > 0

const itemText = ({ item, sheet }: Purchase, unit: Unit): string =>
  sheet ? `${item}, ${formatSize(sheet.size, unit)}${sheet.offcut ? ', offcut' : ''}` : item
