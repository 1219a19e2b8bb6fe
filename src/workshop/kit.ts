import type { Amount, FilledLesson } from '../lesson/lesson.ts'
import type { Wording } from '../wording/wording.ts'
import { type KitLetters, type KitPiece, kitPieces, type StockTotal, totalsByStock } from './kit-pieces.ts'
import { type KitSupply, onEachTable, perGroup, supplyFor } from './kit-supply.ts'
import { multiplied } from './multiplied.ts'
import { addUp, type Need, type Quantity } from './needs.ts'

/** What a class needs: in each kit, on the tables, with the tutor, and in all. */
export interface Kit {
  readonly lesson: string
  /** How its lesson speaks. */
  readonly wording: Wording
  readonly people: number
  readonly spare: number
  /** What one kit holds. */
  readonly each: readonly (KitPiece | KitLetters | KitSupply)[]
  readonly shared: readonly KitSupply[]
  readonly tutor: readonly KitSupply[]
  /** The pieces of all kits, by stock. */
  readonly stocks: readonly StockTotal[]
  /** The supplies that are used up, in all. */
  readonly buy: readonly Need[]
}

/**
 * Works out what a class needs. Pieces and each person's supplies are wanted once for every kit, spare kits too.
 * What is shared (`1 per 3`) is wanted for the people who sit down, so spare kits do not count, and a group that
 * is not full still gets its share. Bought is what every kit uses up, what the tables and the tutor need of the
 * same items, and anything that is measured; a shared tool is not used up.
 *
 * @param tables how many of them sit at each table, if that is known: then each table gets shares of its own.
 * @throws RangeError when `people` is not a whole number from 1 up, or `spare` not one from 0 up.
 */
export function makeKit(
  lesson: FilledLesson,
  people: number,
  spare: number,
  tables?: readonly number[],
): Kit {
  mustBeWhole('people', people, 1)
  mustBeWhole('spare kits', spare, 0)
  const kits = people + spare
  const pieces = kitPieces(lesson)
  const { supplies } = lesson
  const shares = tables ?? [people]
  const each = supplies.each.map((s) => supplyFor(s, [1]))
  const shared = supplies.shared.map((s) => supplyFor(s, shares, tables?.length))
  const tutor = supplies.tutor.map((s) => supplyFor(s, [people], tables?.length))
  const forAll = supplies.each.map((s): Need => ({ item: s.item, need: allOf(s.amount, kits) }))
  const usedUp = new Set(forAll.map(({ item }) => item))
  const besides = [...shared, ...tutor]
    .filter(({ item, amount }) => usedUp.has(item) || isMeasured(amount))
    .map(({ item, amount }): Need => ({ item, need: amount }))
  return {
    lesson: lesson.frontMatter.title,
    wording: lesson.wording,
    people,
    spare,
    each: [...pieces, ...each],
    shared,
    tutor,
    stocks: totalsByStock(pieces, kits),
    buy: addUp([...forAll, ...besides]),
  }
}

const isMeasured = ({ kind }: Quantity): boolean => kind === 'length' || kind === 'area' || kind === 'dose'

/** An amount for one kit, for `kits` of them. */
function allOf(amount: Amount, kits: number): Quantity {
  if (amount.kind === 'per') return { kind: 'count', count: perGroup(amount, kits) }
  if (amount.kind === 'per table') return onEachTable(amount)
  return multiplied(amount, kits)
}

function mustBeWhole(what: string, n: number, least: number): void {
  if (!Number.isSafeInteger(n) || n < least)
    throw new RangeError(`Unexpected number of ${what} \`${n}\`, expected a whole number from ${least} up`)
}
