import type Fraction from 'fraction.js'
import { fitInside, mustCover } from '../../length/grid.ts'
import { inches, type Length, minus, mm, over, plus, shorter, type Unit, zero } from '../../length/length.ts'
import type { Series } from '../envelopes/standard.ts'

/** A piece of mail as it is measured: its longer side, its shorter side, its thickness. */
export interface Item {
  readonly long: Length
  readonly high: Length
  readonly thick: Length
}

/** A class of letters: what it takes. */
export interface LetterClass {
  readonly name: string
  readonly least?: Partial<Item>
  readonly most: Partial<Item>
  /** Long, high and thick together. */
  readonly mostTogether?: Length
  /** Long side by short side, both ends allowed. */
  readonly ratio?: { readonly least: Fraction; readonly most?: Fraction }
  /** Whether a square is refused. */
  readonly oblong?: boolean
  /** Whatever else it asks for: what is wrong with this item, if anything. */
  readonly also?: (item: Item) => Miss | undefined
  /** The heaviest, as text. */
  readonly weight?: string
}

/** A country's letters, the cheapest class first. */
export interface LetterPost {
  readonly country: string
  /** Its short name in `{card.posts.uk}`. */
  readonly key: string
  readonly unit: Unit
  /** Which standard envelopes its shops have. */
  readonly shops: Series
  readonly classes: readonly LetterClass[]
  /** What every class asks for, and what is said of anything smaller. */
  readonly smallest?: { readonly least: Partial<Item>; readonly otherwise: string }
  /** How far sides may be off their limits, besides. */
  readonly tolerance?: Length
  /** What is larger than all classes. */
  readonly beyond: string
  readonly asOf: FiguresDate
}

/** When figures were published, or read where their page has no date. */
export interface FiguresDate {
  /** The first year of several. */
  readonly from?: number
  readonly year: number
  /** From 1. */
  readonly month?: number
  readonly read?: true
}

/** Why a class does not take an item. */
export type Miss =
  | {
      readonly kind: 'side'
      readonly side: keyof Item
      readonly bound: 'least' | 'most'
      readonly has: Length
      readonly limit: Length
    }
  | { readonly kind: 'together'; readonly has: Length; readonly limit: Length }
  /** Long side by short side. */
  | {
      readonly kind: 'ratio'
      readonly bound: 'least' | 'most'
      readonly has: Fraction
      readonly limit: Fraction
    }
  /** `least`: the long side by the short one, where the class has such a limit. */
  | { readonly kind: 'square'; readonly least?: Fraction }
  | { readonly kind: 'thin for its size'; readonly least: Length }

/** How something posts. */
export interface Classed {
  readonly name: string
  readonly weight?: string
  /** Why it is not in the first class. */
  readonly why: readonly Miss[]
}

/**
 * The class of an item: the first that takes it, and why the first of all does not.
 *
 * @param wrapping for an item that still has to be put in something: it will be larger, and of another shape, so only what
 * it is too large for is told.
 */
export function classify(post: LetterPost, item: Item, wrapping = false): Classed {
  const { smallest, classes, beyond } = post
  const small = smallest && !wrapping ? belowOf(item, smallest.least, post) : []
  if (smallest && small.length > 0) return { name: smallest.otherwise, why: small }
  const misses = classes.map((one) => [
    ...aboveOf(item, one.most, post),
    ...togetherMisses(item, one, post),
    ...(wrapping ? [] : shapeMisses(item, one, post)),
  ])
  const why = misses[0] ?? []
  const taking = classes[misses.findIndex((list) => list.length === 0)]
  if (!taking) return { name: beyond, why }
  return { name: taking.name, why, ...(taking.weight !== undefined && { weight: taking.weight }) }
}

function shapeMisses(item: Item, { least = {}, ratio, oblong, also }: LetterClass, post: LetterPost): Miss[] {
  const other = also?.(item)
  return [
    ...belowOf(item, least, post),
    ...(ratio ? ratioMisses(over(item.long, item.high), ratio) : []),
    ...(oblong && item.long.equals(item.high) ? [{ kind: 'square' as const }] : []),
    ...(other === undefined ? [] : [other]),
  ]
}

const sides = ['long', 'high', 'thick'] as const

/** How fine a side is told, away from the limit that it misses. */
const told = {
  in: { long: inches(1, 16), high: inches(1, 16), thick: inches(1, 1000) },
  mm: { long: mm(1), high: mm(1), thick: mm(0.1) },
} as const

const belowOf = (item: Item, least: Partial<Item>, { unit, tolerance = zero }: LetterPost): Miss[] =>
  sides.flatMap((side): Miss[] => {
    const limit = least[side]
    if (!limit || !shorter(item[side], side === 'thick' ? limit : minus(limit, tolerance))) return []
    return [{ kind: 'side', side, bound: 'least', has: fitInside(item[side], told[unit][side]), limit }]
  })

const aboveOf = (item: Item, most: Partial<Item>, { unit, tolerance = zero }: LetterPost): Miss[] =>
  sides.flatMap((side): Miss[] => {
    const limit = most[side]
    if (!limit || !shorter(side === 'thick' ? limit : plus(limit, tolerance), item[side])) return []
    return [{ kind: 'side', side, bound: 'most', has: mustCover(item[side], told[unit][side]), limit }]
  })

function togetherMisses(
  { long, high, thick }: Item,
  { mostTogether }: LetterClass,
  { unit, tolerance = zero }: LetterPost,
): Miss[] {
  const all = plus(long, high, thick)
  if (!mostTogether || !shorter(plus(mostTogether, tolerance), all)) return []
  return [{ kind: 'together', has: mustCover(all, told[unit].long), limit: mostTogether }]
}

function ratioMisses(x: Fraction, { least, most }: NonNullable<LetterClass['ratio']>): Miss[] {
  if (x.equals(1) && x.lt(least)) return [{ kind: 'square', least }]
  if (x.lt(least)) return [{ kind: 'ratio', bound: 'least', has: x.floor(2), limit: least }]
  if (most && x.gt(most)) return [{ kind: 'ratio', bound: 'most', has: x.ceil(2), limit: most }]
  return []
}
