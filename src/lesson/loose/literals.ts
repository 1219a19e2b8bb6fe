import { type Length, mm, plus, unitLength } from '../../length/length.ts'
import { sheetSize } from '../../length/paper.ts'
import type { UnitName } from '../../length/tokens.ts'
import { type Amount, amountAt } from './amount.ts'
import type { Literal } from './literal.ts'
import { numberInWords, partPattern } from './number-words.ts'
import { unitAt } from './unit-at.ts'

/** One number of a measure, with its unit or before it is known. */
interface Item {
  readonly amount: Amount
  readonly unit?: UnitName
  readonly start: number
  readonly end: number
  /** What is added to it: the `5 mm` of `1 cm 5 mm`, the half of `an inch and a half`. */
  readonly more?: Length
}

type Joint = 'size' | 'list' | 'range'

const joints: readonly (readonly [RegExp, Joint])[] = [
  [/ ?[x×✕] ?(?=[\d.¼½¾⅐-⅞])| by (?=[\p{L}\d.¼½¾⅐-⅞])/iuy, 'size'],
  [/,? (?:and|or|&) |, /iy, 'list'],
  [/ to | ?[–—] ?|-(?=\d)/iy, 'range'],
]

/** Where a number in figures may start, and one in letters, which needs a unit in letters: no need to look elsewhere. */
const figures = /\d|\.\d|[¼½¾⅐-⅞]/g
const figuresOrLetters =
  /\d|\.\d|[¼½¾⅐-⅞]|\b(?:an?|half|quarter|eighth|third|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|thirteen|fourteen|fifteen|sixteen)\b/giu
const unitInLetters = /inch|met(?:re|er)|foot|feet/i
const sheet = /\b(?:[ABC][2-8]|DL)(?: (?:portrait|landscape))?(?![\p{L}\p{N}-])/gu

/**
 * Every measure that stands in words as plain numbers with a unit, in order. Times, weights, prices, counts, ratios and
 * dates are none, and neither is the `in` of "cut 2 in the same way".
 */
export function literalsIn(text: string): Literal[] {
  const found: Literal[] = []
  let from = 0
  for (const { index } of text.matchAll(unitInLetters.test(text) ? figuresOrLetters : figures)) {
    if (index < from) continue
    const literal = literalAt(text, index)
    if (!literal) continue
    found.push(...literal)
    from = found.at(-1)?.end ?? from
  }
  const free = (start: number, end: number): boolean => found.every((l) => end <= l.start || l.end <= start)
  const sheets = [...text.matchAll(sheet)].flatMap(({ index, 0: name }): Literal[] => {
    const size = sheetSize(name)
    if (!size || !free(index, index + name.length)) return []
    const lengths = [size.width, size.height]
    return [
      {
        kind: 'sheet',
        lengths,
        steps: lengths.map(() => mm(1)),
        unit: 'mm',
        start: index,
        end: index + name.length,
      },
    ]
  })
  return [...found, ...sheets].sort((a, b) => a.start - b.start)
}

function literalAt(text: string, start: number): Literal[] | undefined {
  const first = itemAt(text, start)
  if (!first) return undefined
  const items = [first]
  const kinds: Joint[] = []
  for (;;) {
    const last = items.at(-1) ?? first
    const next = nextItem(text, last.end)
    // In "six, 1 1/2 in each" the six is a count.
    if (!next || (last.unit === undefined && isInWords(last) !== isInWords(next.item))) break
    items.push(next.item)
    kinds.push(next.joint)
  }
  // What stands behind the last unit is no part of it.
  while (items.length > 0 && items.at(-1)?.unit === undefined) {
    items.pop()
    kinds.pop()
  }
  if (items.length === 0) return undefined
  return grouped(text, withUnits(withoutArticle(text, items)), kinds)
}

/** In "a quarter inch margin" the article is the margin's; in "a quarter inch at the edge" it is the inch's. */
const article = /^an? (?=\S+[ -]inch)/i
const noThing =
  /^(?:$|[^\p{L}\s]| (?:of|from|at|in|on|to|into|all|and|or|is|are|by|for|with|than|wide|high|long|tall|deep|thick|apart|below|above|left|right|round|each|either|away|up|down|off|free|bare|clear|before|behind|under|over|so|as|if|that|which)(?!\p{L}))/iu

function withoutArticle(text: string, items: readonly Item[]): readonly Item[] {
  const [first, ...rest] = items
  const last = items.at(-1)
  const found = first && article.exec(text.slice(first.start, first.end))?.[0]
  if (!first || !last || !found || noThing.test(text.slice(last.end))) return items
  return [{ ...first, start: first.start + found.length }, ...rest]
}

const isInWords = ({ amount }: Item): boolean => amount.written === 'words'

function itemAt(text: string, start: number, joint?: Joint): Item | undefined {
  const amount = amountAt(text, start, joint !== undefined)
  if (!amount) return undefined
  const unit = unitAt(text, start, amount, joint === 'size')
  if (!unit) {
    // `1,2` is one and two tenths only before a metric unit; bare words are an amount only with their own unit.
    return amount.written === 'words' && /^an?\b/i.test(text.slice(start))
      ? undefined
      : { amount, start, end: amount.end }
  }
  if (amount.comma && (unit.unit === 'in' || unit.unit === 'ft')) return undefined
  const item = { amount, unit: unit.unit, start, end: unit.end }
  return { ...item, ...addedTo(text, item) }
}

const smaller: Partial<Record<UnitName, UnitName>> = { ft: 'in', m: 'cm', cm: 'mm' }
const half = new RegExp(
  ` and (${partPattern})(?![\\p{L}\\p{N}-]| (?:an? |of an? )?(?:inch|mm|cm|centi|milli))`,
  'iuy',
)

/** `1 cm 5 mm`, `1 ft 6 in`, `an inch and a half`. */
function addedTo(
  text: string,
  { amount, unit, end }: Item & { unit: UnitName },
): { more: Length; end: number } | object {
  half.lastIndex = end
  const words = amount.written === 'broken' ? undefined : half.exec(text)
  const part = words?.[1] === undefined ? undefined : numberInWords(words[1])
  if (words && part) return { more: mm(part.value.mul(unitLength[unit])), end: end + words[0].length }
  const space = /^ (?=\d)/.exec(text.slice(end))
  const below = space && amountAt(text, end + 1)
  const belowUnit = below && unitAt(text, end + 1, below)
  if (!below || !belowUnit || belowUnit.unit !== smaller[unit]) return {}
  return { more: mm(below.value.mul(unitLength[belowUnit.unit])), end: belowUnit.end }
}

function nextItem(text: string, at: number): { item: Item; joint: Joint } | undefined {
  for (const [pattern, joint] of joints) {
    pattern.lastIndex = at
    const between = pattern.exec(text)?.[0]
    const item = between === undefined ? undefined : itemAt(text, at + between.length, joint)
    if (item) return { item, joint }
  }
  return undefined
}

/** A number without a unit has the one of the next that has one. */
function withUnits(items: readonly Item[]): (Item & { unit: UnitName; own: boolean })[] {
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
function grouped(text: string, items: readonly Whole[], kinds: readonly Joint[]): Literal[] {
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
