import type { FoldStyle } from '../../src/card/style.ts'
import { check } from './block.ts'

export const units = ['in', 'mm'] as const

/** Shut cards from a large one down to a gift tag, the smallest that a beginner makes. Common practice, no source. */
export const sizes = [
  '7 x 5 in',
  '120 x 170 mm',
  '5 x 5 in',
  '4 1/4 x 5 1/2 in',
  'A6',
  'A7 landscape',
  '3 x 3 in',
] as const

const oblong = ['8 x 6 in', '7 x 5 in', '5 x 7 in', '120 x 170 mm', '210 x 148 mm', '4 1/4 x 5 1/2 in']

/** The sizes of any test that a fold cannot be made in, and says so. All others can. */
const refusedBy: Readonly<Record<string, readonly string[]>> = {
  // Four panels with three steps between them are higher than these.
  waterfall: ['A7 landscape', '3 x 3 in'],
  // They are square.
  endless: [...oblong, 'A6', 'A6 landscape', 'A7 landscape'],
  'exploding box': [...oblong, 'A6', 'A6 landscape', 'A7 landscape'],
}

export const isRefused = ({ name }: Pick<FoldStyle, 'name'>, closed: string): boolean =>
  refusedBy[name]?.includes(closed) ?? false

/** The starter card of a fold in both units, at a size that it can be made in. */
export function cardsAt(style: FoldStyle, closed?: string) {
  return units.map((unit) => {
    const { card, findings } = check(style.starter, closed ? { unit, closed } : { unit })
    if (!card || findings.length > 0)
      throw new Error(`${style.name} at ${closed} in ${unit}: ${findings.map((f) => f.message).join('; ')}`)
    return card
  })
}
