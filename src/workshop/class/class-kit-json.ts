import { type FindingJson, findingJson } from '../finding-json.ts'
import { type EachJson, eachJson, needJson, type SupplyJson, supplyJson } from '../kit-json.ts'
import { type LengthJson, type SizeJson, sizeJson } from '../length-json.ts'
import type { ClassKit } from './class-kit.ts'
import { soldAs } from './class-kit-listing.ts'
import { moneyNumber } from './money-text.ts'

type NeedJson = number | LengthJson | string

/** What `kit CLASS --json` answers. */
export interface ClassKitJson {
  readonly title: string
  readonly people: number
  readonly spare: number
  readonly each: readonly (EachJson & { lesson: string })[]
  readonly shared: readonly SupplyJson[]
  readonly tutor: readonly SupplyJson[]
  readonly buy: readonly {
    readonly item: string
    readonly need: NeedJson
    readonly sheet?: SizeJson
    readonly sold?: string
    readonly count?: number
    readonly have: NeedJson
    readonly cost?: number
  }[]
  readonly total: number
  readonly aHead: number
  readonly findings: readonly FindingJson[]
}

/** The lists of a class for other programs; money in the class file's currency, to a hundredth. */
export function classKitJson(kit: ClassKit): ClassKitJson {
  const { unit } = kit
  return {
    title: kit.title,
    people: kit.people,
    spare: kit.spare,
    each: kit.lessons.flatMap(({ kit: one }) =>
      one.each.map((entry) => ({ ...eachJson(entry, unit), lesson: one.lesson })),
    ),
    shared: kit.shared.map((supply) => supplyJson(supply, unit)),
    tutor: kit.tutor.map((supply) => supplyJson(supply, unit)),
    buy: kit.buy.map((line) => {
      const sold = soldAs(line, unit)
      return {
        item: line.item,
        need: needJson(line.need, unit),
        ...(line.sheet && { sheet: sizeJson(line.sheet.size, unit) }),
        ...(sold !== '' && { sold }),
        ...(line.count !== undefined && { count: line.count }),
        have: needJson(line.have, unit),
        ...(line.cost !== undefined && { cost: moneyNumber(line.cost) }),
      }
    }),
    total: moneyNumber(kit.total),
    aHead: moneyNumber(kit.aHead),
    findings: kit.findings.map(findingJson),
  }
}
