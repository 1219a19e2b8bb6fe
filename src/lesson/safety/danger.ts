import { isRefused } from '../prose/refused.ts'
import { wordFinder } from '../prose/word-list.ts'
import type { Hazard } from './hazard.ts'
import { hazards } from './hazards.ts'

/** Words of a text that name a tool or a supply with a hazard. */
export interface Danger {
  readonly hazard: Hazard
  readonly start: number
  readonly end: number
}

/** How a text is read. */
export interface Reading {
  /** An item of a list says nothing but its name; a caution speaks of what it names, however it puts it. */
  readonly as: 'item' | 'step' | 'caution'
  readonly children: boolean
  /** Whether a stretch of it means something else, such as a piece of the card. */
  readonly isTaken?: (start: number, end: number) => boolean
}

interface Meaning {
  readonly hazard: Hazard
  readonly how: 'always' | 'alone' | 'children'
}

const meanings = new Map<string, Meaning[]>()
const innocent = new Set<string>()
for (const hazard of hazards) {
  const { words, alone = [], forChildren = [], not = [] } = hazard
  for (const [how, list] of [
    ['always', words],
    ['alone', alone],
    ['children', forChildren],
  ] as const)
    for (const word of list) meanings.set(word, [...(meanings.get(word) ?? []), { hazard, how }])
  for (const word of not) innocent.add(word)
}
const finder = wordFinder([...new Set([...meanings.keys(), ...innocent])])

/** Everything in a text that names a tool or a supply with a hazard, in the order of the words. */
export function dangersIn(text: string, { as, children, isTaken }: Reading): Danger[] {
  return finder(text).flatMap(({ word, start, end }) => {
    const [before, after] = [text.slice(0, start), text.slice(end)]
    const isMeant = ({ hazard, how }: Meaning): boolean => {
      if (how === 'children' && !children) return false
      if (as === 'caution') return true
      if (hazard.pictured && isPicture(before, after)) return false
      return how !== 'alone' || (as === 'item' ? isWhole(before, after) : isUsed(before, after))
    }
    if (isTaken?.(start, end) || (as === 'step' && isRefused(before, after))) return []
    return (meanings.get(word) ?? []).filter(isMeant).map(({ hazard }) => ({ hazard, start, end }))
  })
}

/** `a paper balloon`, `balloon stickers`, `draw a balloon`. */
const isPicture = (before: string, after: string): boolean =>
  /\b(?:paper|card|cardboard|felt|drawn|painted|printed|stamped|cut-out|die-cut)[ -]$/i.test(before) ||
  /\b(?:draw|sketch|paint|colour|color|trace|stamp|print|cut out)(?: an?| the| some| your| each)?(?: \p{Ll}{2,9})? $/iu.test(
    before,
  ) ||
  /^[ -](?:paper|card(?:stock)?|stamp|die|stencil|template|shape|pattern|motif|outline|sticker|picture|drawing|image|design|print)s?\b/i.test(
    after,
  )

/** `iron`, `iron (warm)`; but not `iron gate`. */
const isWhole = (before: string, after: string): boolean =>
  before.trim() === '' && /^\s*(?:$|[,(]|or\b|and\b)/.test(after)

/** `press it with an iron.`, `light a match`; but not `a lighter blue`. */
const isUsed = (before: string, after: string): boolean =>
  /\b(?:with|use|using|take|light|strike|pour|mix)(?: an?| the| your| some)? $/i.test(before) &&
  /^(?:$|[.,;:!?)]| (?:and|to|on|over|at|until|for|from|into)\b)/.test(after)
