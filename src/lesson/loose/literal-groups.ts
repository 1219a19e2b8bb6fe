import { type Length, mm, plus, unitLength } from '../../length/length.ts'
import type { UnitName } from '../../length/tokens.ts'
import type { Literal } from './literal.ts'
import type { Item, Joint } from './literal-items.ts'

/** A number without a unit has the one of the next that has one. */
export function withUnits(items: readonly Item[]): (Item & { unit: UnitName; own: boolean })[] {
  let unit: UnitName = 'in'
  return items
    .toReversed()
    .map((item) => {
      unit = item.unit ?? unit
      return { ...item, unit, own: item.unit !== undefined }
    })
    .toReversed()
}

type Whole = ReturnType<typeof withUnits>[number]

const lengthOf = ({ amount, unit, more }: Whole): Length =>
  plus(mm(amount.value.mul(unitLength[unit])), more ?? mm(0))
const stepOf = ({ amount, unit, more }: Whole): Length =>
  more ? mm(1) : mm(unitLength[unit].div(amount.denominator))

/** Items with their joints as literals: sizes bind closest, then ranges, then lists. */
export function grouped(text: string, items: readonly Whole[], kinds: readonly Joint[]): Literal[] {
  const sized = kinds.indexOf('size')
  // `12 x 12 in and 3 x 4 in`, or a list before a size: each size stands by itself.
  if (sized >= 0 && items.length > 2) {
    const before = items.slice(0, sized)
    const behind = items.slice(sized + 2)
    return [
      ...(before.every(({ own }) => own) && before.length > 0
        ? grouped(text, before, kinds.slice(0, sized - 1))
        : []),
      ...grouped(text, items.slice(sized, sized + 2), ['size']),
      ...(behind.length > 0 ? grouped(text, behind, kinds.slice(sized + 2)) : []),
    ]
  }
  const [kind] = kinds
  if (items.length === 1) return [square(text, whole('length', items)) ?? whole('length', items)]
  if (items.length === 2 && kind !== undefined && kind !== 'list') return [whole(kind, items)]
  const isMixed = kinds.some((k) => k === 'range')
  const own = items.every((item) => item.own)
  if (isMixed) return own ? items.map((item) => whole('length', [item])) : [whole('range', items)]
  const literal = whole('list', items)
  return [own ? { ...literal, parts: items.map((item) => whole('length', [item])) } : literal]
}

function whole(kind: Literal['kind'], items: readonly Whole[]): Literal {
  const last = items.at(-1)
  return {
    kind,
    lengths: items.map(lengthOf),
    steps: items.map(stepOf),
    unit: last?.unit ?? 'in',
    start: items[0]?.start ?? 0,
    end: last?.end ?? 0,
  }
}

/** `8 5/16 in square` is a size; in "a 4 in square" the square is a thing. */
function square(text: string, literal: Literal): Literal | undefined {
  const behind = /^ square(?![\p{L}-])(?! of)/u.exec(text.slice(literal.end))?.[0]
  const [length] = literal.lengths
  const [step] = literal.steps
  if (!behind || !length || !step || /\b(?:an?|the|one|two|each) $/i.test(text.slice(0, literal.start)))
    return undefined
  return {
    ...literal,
    kind: 'size',
    lengths: [length, length],
    steps: [step, step],
    end: literal.end + behind.length,
  }
}
