import type { Wording } from '../../wording/wording.ts'
import { amount, count, measure, type Section, words } from '../listing.ts'
import { isNothing, type Purchase } from './buying.ts'
import type { ClassKit } from './class-kit.ts'
import { moneyText } from './money-text.ts'
import { sheetWords } from './sheet-words.ts'
import { theRest } from './shopping.ts'
import { besideSold, soldText } from './sold.ts'

/** What to buy, a table for each part of the shop that the class file names, with what it costs there. */
export const buySections = ({ shopping, wording, currency }: ClassKit): Section[] =>
  shopping.map(({ name, lines, total }) => {
    const { say } = wording
    const priced = lines.some(({ cost }) => cost !== undefined)
    const notes = [
      ...(name !== undefined && priced
        ? [say('class.here', { amount: moneyText(total, currency, wording) })]
        : []),
      ...(lines.some(isByArea) ? [say('class.by-area')] : []),
    ]
    return {
      heading:
        name === undefined ? say('class.to-buy') : say('class.to-buy-at', { part: partWords(name, wording) }),
      columns: [
        words(say('kit.item')),
        measure(say('kit.needed')),
        measure(say('class.there')),
        count(say('class.buy')),
        words(say('class.sold-as')),
        amount(say('class.cost')),
      ],
      rows: lines.map((line) => [
        itemText(line, wording),
        besideSold(line.need, line.sold, 'up', wording),
        isNothing(line.have) ? '' : besideSold(line.have, line.sold, 'down', wording),
        line.count === undefined ? '' : String(line.count),
        soldAs(line, wording),
        line.cost === undefined ? '' : moneyText(line.cost, currency, wording),
      ]),
      ...(notes.length > 0 && { note: notes.join(' ') }),
    }
  })

/** A part of the shop, as the teacher calls it. */
export const partWords = (name: string, { say }: Wording): string =>
  name === theRest ? say('class.the-rest') : name

/** `roll of 10 m`, or nothing for what is bought one by one. */
export const soldAs = ({ sold }: Pick<Purchase, 'sold'>, wording: Wording): string =>
  sold ? soldText(sold, wording) : ''

const isByArea = ({ sold, count: n }: Purchase): boolean => sold?.kind === 'sheet' && n !== undefined && n > 0

const itemText = ({ item, sheet }: Purchase, wording: Wording): string =>
  sheet
    ? wording.say('class.stock-sheet', { stock: wording.name(item), sheet: sheetWords(sheet, wording) })
    : item
