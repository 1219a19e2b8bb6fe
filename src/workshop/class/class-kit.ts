import type { Finding } from '../../length/finding.ts'
import { plus, type Unit } from '../../length/length.ts'
import { type Kit, type KitSupply, makeKit } from '../kit.ts'
import { addUp } from '../needs.ts'
import { type Purchase, purchaseOf, totalOf } from './buying.ts'
import { atOnce, type ClassFile, type Money } from './class-file.ts'
import { classTitle, type Taught } from './taught.ts'

/** What a whole class needs, and what it costs. */
export interface ClassKit {
  readonly title: string
  readonly unit: Unit
  readonly people: number
  readonly spare: number
  readonly currency: string
  readonly lessons: readonly { readonly taught: Taught; readonly kit: Kit }[]
  readonly shared: readonly KitSupply[]
  readonly tutor: readonly KitSupply[]
  /** Sheets first, then supplies. */
  readonly buy: readonly Purchase[]
  /** Of everything that has a price. */
  readonly total: Money
  readonly aHead: Money
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
  const kits = lessons.map((taught) => ({
    taught,
    kit: makeKit(taught.lesson, taught.people, taught.kits - taught.people),
  }))
  const needs = addUp(kits.flatMap(({ kit }) => kit.buy))
  const buy = [...sheets, ...needs.map((need) => purchaseOf(need, file.supplies.get(need.item)))]
  const total = totalOf(buy)
  return {
    title: classTitle(file, lessons),
    unit: lessons[0]?.lesson.unit ?? 'in',
    people: file.people,
    spare: file.spare,
    currency: file.currency,
    lessons: kits,
    shared: together(
      kits.map(({ kit }) => kit.shared),
      atOnce(file),
    ),
    tutor: together(
      kits.map(({ kit }) => kit.tutor),
      true,
    ),
    buy,
    total,
    aHead: total.div(file.people),
    findings: [
      ...short,
      ...notNeeded(
        file,
        needs.map(({ item }) => item),
      ),
    ],
  }
}

/** Supplies of several lessons as one list: lengths always add up, counts only if they are needed at once. */
function together(lists: readonly (readonly KitSupply[])[], adds: boolean): KitSupply[] {
  const all = new Map<string, KitSupply>()
  for (const supply of lists.flat()) {
    const key = `${supply.amount.kind} ${supply.item}`
    const before = all.get(key)
    all.set(key, before ? merged(before, supply, adds) : supply)
  }
  return [...all.values()]
}

function merged(a: KitSupply, b: KitSupply, adds: boolean): KitSupply {
  const rule = a.rule === b.rule ? a.rule : undefined
  const { rule: _, ...rest } = a
  const with_ = (amount: KitSupply['amount']): KitSupply => ({
    ...rest,
    amount,
    ...(rule !== undefined && { rule }),
  })
  if (a.amount.kind === 'count' && b.amount.kind === 'count') {
    const [one, other] = [a.amount.count, b.amount.count]
    return with_({ kind: 'count', count: adds ? one + other : Math.max(one, other) })
  }
  if (a.amount.kind === 'length' && b.amount.kind === 'length')
    return with_({ kind: 'length', length: plus(a.amount.length, b.amount.length) })
  return a
}

/** A supply that the class file sells and no lesson uses is probably misspelt. */
function notNeeded({ supplies }: ClassFile, needed: readonly string[]): Finding[] {
  return [...supplies].flatMap(([item, { place }]) =>
    needed.includes(item)
      ? []
      : [
          {
            rule: 'not-needed',
            severity: 'warning' as const,
            message: `No lesson of this class uses up \`${item}\``,
            suggestion:
              needed.length > 0
                ? `Write it as in the lesson: ${needed.map((n) => `\`${n}\``).join(', ')}`
                : 'Take it out',
            place,
          },
        ],
  )
}
