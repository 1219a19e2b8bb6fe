import { inches, shorter } from '../length/length.ts'
import type { Wording } from '../wording/wording.ts'
import type { Kit } from './kit.ts'
import type { KitLetters, KitPiece } from './kit-pieces.ts'
import { ruleText } from './kit-rule.ts'
import type { KitSupply } from './kit-supply.ts'
import { count, type Listing, measure, type Section, withoutEmptyColumns, words } from './listing.ts'
import type { Quantity } from './needs.ts'
import { quantityText } from './quantity-text.ts'
import { reelText } from './reel.ts'

/** A kit list as tables: in each kit, on the tables, with the tutor, what to cut of each stock, what to buy. */
export function kitListing(kit: Kit): Listing {
  const { wording, people, spare } = kit
  const { say } = wording
  const sections: Section[] = [
    eachSection(kit.each, say('kit.in-each-kit'), wording),
    supplySection(say('kit.on-the-tables'), kit.shared, wording),
    supplySection(say('kit.for-the-tutor'), kit.tutor, wording),
    {
      heading: say('kit.to-cut'),
      columns: [
        words(say('kit.piece')),
        count(say('kit.count')),
        measure(say('kit.width-height')),
        words(say('kit.stock')),
      ],
      rows: kit.stocks.flatMap(({ stock, pieces }) =>
        pieces.map((p) => [
          pieceWords(p, wording),
          String(p.count),
          wording.size(p.size),
          wording.name(stock),
        ]),
      ),
    },
    {
      heading: say('kit.to-have-ready'),
      columns: [words(say('kit.item')), measure(say('kit.in-all')), words(say('kit.or'))],
      rows: kit.buy.map(({ item, need }) => [item, quantityText(need, wording), longer(need, wording)]),
    },
  ]
  return {
    title: say('kit.title', { title: kit.lesson }),
    intro: say('kit.for-people', { people, spare, kits: people + spare }),
    sections: sections.filter(({ rows }) => rows.length > 0).map(withoutEmptyColumns),
  }
}

/** What one kit holds, as a table. */
export const eachSection = (each: Kit['each'], heading: string, wording: Wording): Section => ({
  heading,
  columns: [
    words(wording.say('kit.item')),
    count(wording.say('kit.count')),
    measure(wording.say('kit.how-much')),
    words(wording.say('kit.stock')),
  ],
  rows: each.map((entry) => eachRow(entry, wording)),
})

/** Supplies with the rules that they are worked out by, as a table. */
export const supplySection = (heading: string, list: readonly KitSupply[], wording: Wording): Section => ({
  heading,
  columns: [
    words(wording.say('kit.item')),
    measure(wording.say('kit.how-much')),
    words(wording.say('kit.rule')),
  ],
  rows: list.map(({ item, amount, rule }) => [item, quantityText(amount, wording), ruleText(rule, wording)]),
})

function eachRow(entry: KitPiece | KitLetters | KitSupply, wording: Wording): string[] {
  if (entry.kind === 'piece')
    return [
      pieceWords(entry, wording),
      String(entry.count),
      wording.size(entry.size),
      wording.name(entry.stock),
    ]
  if (entry.kind === 'letters') {
    const { count: n, letters } = entry
    return [pieceWords(entry, wording), String(n), wording.say('kit.letters', { letters }), '']
  }
  const { item, amount } = entry
  return amount.kind === 'count' && amount.of === undefined
    ? [item, String(amount.count), '', '']
    : [item, '', quantityText(amount, wording), '']
}

/** A piece with its card, where the lesson has several: `base (box)`. */
export function pieceWords({ item, card }: { item: string; card?: string }, wording: Wording): string {
  const piece = wording.name(item)
  return card ? wording.say('kit.piece-of-card', { piece, card: wording.name(card) }) : piece
}

/** A long length in inches in yards too, rounded up to a tenth so that it is never too little. */
const longer = (need: Quantity, wording: Wording): string =>
  need.kind !== 'length' || wording.unit === 'mm' || shorter(need.length, inches(36))
    ? ''
    : reelText(need.length, 'yd', 'up', wording)
