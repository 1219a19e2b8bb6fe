import type { Finding } from '../../length/finding.ts'
import type { Wording } from '../../wording/wording.ts'
import { type Kit, makeKit } from '../kit.ts'
import type { KitSupply } from '../kit-supply.ts'
import { addUp } from '../needs.ts'
import { forAllTables, makersByTable, type TableKit, tableKits } from './at-tables.ts'
import { type Purchase, purchaseOf, totalOf } from './buying.ts'
import { atOnce, type ClassFile } from './class-file.ts'
import { classWording } from './class-wording.ts'
import type { Money } from './money.ts'
import { type PaperWeight, paperWeight } from './paper-weight.ts'
import { type Price, priceOf } from './price.ts'
import { type ShoppingGroup, shopFindings, shoppingGroups } from './shopping.ts'
import { supplyFindings } from './supply-findings.ts'
import { classTitle, type Taught } from './taught.ts'
import { together } from './together.ts'

/** What a whole class needs, and what it costs. */
export interface ClassKit {
  readonly title: string
  readonly wording: Wording
  readonly people: number
  readonly spare: number
  readonly currency: string
  readonly lessons: readonly { readonly taught: Taught; readonly kit: Kit }[]
  /** Everything that is shared, on all tables together. */
  readonly shared: readonly KitSupply[]
  /** What lies where, if the class file has tables. */
  readonly tables: readonly TableKit[]
  /** Of what is shared, what serves all tables; everything where there are no tables. */
  readonly forAll: readonly KitSupply[]
  readonly tutor: readonly KitSupply[]
  /** Sheets first, then supplies. */
  readonly buy: readonly Purchase[]
  /** The same, by the parts of the shop. */
  readonly shopping: readonly ShoppingGroup[]
  /** Of everything that has a price. */
  readonly total: Money
  /** That, for each who pays: the spare kits are in it. */
  readonly aHead: Money
  readonly paying: number
  readonly price?: Price
  readonly weight: PaperWeight
  readonly findings: readonly Finding[]
}

/**
 * The lists of a class. What each lesson uses up is added up over the lessons; a tool serves one lesson after the other,
 * unless they are made at the same time.
 *
 * @param sheets to buy, as the cutting plans use them.
 * @param short what cannot be cut.
 */
export function classKit(
  file: ClassFile,
  lessons: readonly Taught[],
  sheets: readonly Purchase[],
  short: readonly Finding[] = [],
): ClassKit {
  const wording = classWording(file, lessons)
  const makers = makersByTable(file, lessons)
  const kits = lessons.map((taught, i) => ({
    taught,
    kit: makeKit(taught.lesson, taught.people, taught.kits - taught.people, makers[i]),
  }))
  const needs = addUp(kits.flatMap(({ kit }) => kit.buy))
  const buy = [...sheets, ...needs.map((need) => purchaseOf(need, file.supplies.get(need.item)))]
  const total = totalOf(buy)
  const paying = file.price?.paying ?? file.people
  const { shared, tables, forAll } = sharedIn(file, lessons, kits)
  return {
    title: classTitle(file, lessons),
    wording,
    people: file.people,
    spare: file.spare,
    currency: file.currency,
    lessons: kits,
    shared,
    tables,
    forAll,
    tutor: together(
      kits.map(({ kit }) => kit.tutor),
      true,
    ),
    buy,
    shopping: shoppingGroups(buy, file.shop),
    total,
    aHead: total.div(paying),
    paying,
    ...(file.price && { price: priceOf(file.price, total, file.people) }),
    weight: paperWeight(file, lessons, sheets),
    findings: [...short, ...supplyFindings(file, needs, wording.unit), ...shopFindings(file.shop, buy)],
  }
}

/** What is shared: as a whole, and by table where there are tables. */
function sharedIn(
  file: ClassFile,
  lessons: readonly Taught[],
  kits: readonly { readonly kit: Kit }[],
): Pick<ClassKit, 'shared' | 'tables' | 'forAll'> {
  const tables = tableKits(file, lessons)
  if (tables.length === 0) {
    const shared = together(
      kits.map(({ kit }) => kit.shared),
      atOnce(file),
    )
    return { shared, tables, forAll: shared }
  }
  const forAll = forAllTables(file, lessons)
  return { shared: together([...tables.map((table) => table.shared), forAll], true), tables, forAll }
}
