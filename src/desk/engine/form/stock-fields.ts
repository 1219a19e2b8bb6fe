import { usualGrams } from '../../../card/stock.ts'
import type { Field } from '../form.ts'
import { fieldAt, type Making } from './field.ts'
import { at, has, isGroup, isList, type Plain, type PlainMap } from './plain.ts'

/** What a part is cut from. What few people give stands there only when it is written. */
export function stockFields(
  making: Making,
  part: readonly string[],
  usual: string,
  { direction = true }: { direction?: boolean } = {},
): Field[] {
  const { plain } = making.card
  const groups = groupsIn(plain)
  const stock = textIn(at(plain, part), 'stock') ?? usual
  const own = at(plain, part)
  const rare = (['bulk', 'caliper'] as const).filter((key) => has(plain, [...part, key]))
  const names = [...new Set(groups.flatMap((group) => textIn(group, 'stock') ?? []))]
  return [
    fieldAt(making, [...part, 'stock'], { kind: 'words', usual, suggestions: names }),
    fieldAt(making, [...part, 'weight'], {
      kind: 'words',
      usual: usualWeight(groups, own, stock),
      suggestions: [...new Set(groups.flatMap((group) => textIn(group, 'weight') ?? []))],
    }),
    ...rare.map((key) => fieldAt(making, [...part, key], { kind: 'words' })),
    ...(direction ? [fieldAt(making, [...part, 'direction'], { kind: 'flag' })] : []),
  ]
}

/** What the same stock weighs where that is written, or what such a stock usually does. */
function usualWeight(groups: readonly PlainMap[], own: Plain, stock: string): string {
  const elsewhere = groups.filter((group) => group !== own && textIn(group, 'stock') === stock)
  return elsewhere.flatMap((group) => textIn(group, 'weight') ?? []).at(-1) ?? `${usualGrams(stock)} gsm`
}

function textIn(group: Plain, key: string): string | undefined {
  const text = isGroup(group) ? group.get(key) : undefined
  return typeof text === 'string' ? text.trim() : undefined
}

const groupsIn = (plain: Plain): PlainMap[] =>
  isGroup(plain)
    ? [plain, ...[...plain.values()].flatMap(groupsIn)]
    : isList(plain)
      ? plain.flatMap(groupsIn)
      : []
