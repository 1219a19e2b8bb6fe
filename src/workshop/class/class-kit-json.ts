import { wordingOf } from '../../wording/wording.ts'
import { type FindingJson, findingJson } from '../finding-json.ts'
import { type EachJson, eachJson, type NeedJson, needJson, type SupplyJson, supplyJson } from '../kit-json.ts'
import { type SizeJson, sizeJson } from '../length-json.ts'
import type { ClassKit } from './class-kit.ts'
import { moneyNumber } from './money-text.ts'
import { type PriceJson, priceJson } from './price-json.ts'
import { soldText } from './sold.ts'
import { type WeightJson, weightJson } from './weight-json.ts'

/** What `kit CLASS --json` answers. */
export interface ClassKitJson {
  readonly title: string
  readonly people: number
  readonly spare: number
  readonly each: readonly (EachJson & { lesson: string })[]
  readonly shared: readonly SupplyJson[]
  /** Missing where the class file has no tables. */
  readonly tables?: readonly {
    readonly name: string
    readonly people: number
    readonly kits: readonly { lesson: string; count: number }[]
    readonly shared: readonly SupplyJson[]
  }[]
  readonly tutor: readonly SupplyJson[]
  readonly buy: readonly {
    readonly item: string
    readonly need: NeedJson
    readonly sheet?: SizeJson
    readonly sold?: string
    readonly count?: number
    readonly have: NeedJson
    readonly cost?: number
    /** Where in the shop, if the class file names its parts. */
    readonly at?: string
  }[]
  readonly total: number
  readonly aHead: number
  readonly price?: PriceJson
  readonly weight: WeightJson
  readonly findings: readonly FindingJson[]
}

/** The lists of a class for other programs; money in the class file's currency, to a hundredth. */
export function classKitJson(kit: ClassKit): ClassKitJson {
  const { unit } = kit.wording
  const english = wordingOf('en-GB', unit)
  return {
    title: kit.title,
    people: kit.people,
    spare: kit.spare,
    each: kit.lessons.flatMap(({ kit: one }) =>
      one.each.map((entry) => ({ ...eachJson(entry, unit), lesson: one.lesson })),
    ),
    shared: kit.shared.map((supply) => supplyJson(supply, unit)),
    ...(kit.tables.length > 0 && { tables: tablesJson(kit) }),
    tutor: kit.tutor.map((supply) => supplyJson(supply, unit)),
    buy: kit.shopping.flatMap(({ name, lines }) =>
      lines.map((line) => ({
        item: line.item,
        need: needJson(line.need, unit),
        ...(line.sheet && { sheet: sizeJson(line.sheet.size, unit) }),
        ...(line.sold && { sold: soldText(line.sold, english) }),
        ...(line.count !== undefined && { count: line.count }),
        have: needJson(line.have, unit),
        ...(line.cost !== undefined && { cost: moneyNumber(line.cost) }),
        ...(name !== undefined && { at: name }),
      })),
    ),
    total: moneyNumber(kit.total),
    aHead: moneyNumber(kit.aHead),
    ...(kit.price && { price: priceJson(kit.price) }),
    weight: weightJson(kit.weight),
    findings: kit.findings.map(findingJson),
  }
}

const tablesJson = ({ tables, wording: { unit } }: ClassKit): NonNullable<ClassKitJson['tables']> =>
  tables.map(({ name, people, kits, shared }) => ({
    name,
    people,
    kits,
    shared: shared.map((supply) => supplyJson(supply, unit)),
  }))
