import type { FoldStyle, Panels } from './style.ts'

/** What a panel is called by its place beside the spine, and whichever way the card is turned. */
const turning = { left: 'first', upper: 'first', right: 'second', lower: 'second' } as const

/**
 * Names that the panels of a card have besides their own, for a lesson that is printed both ways: the `first door` of a
 * gate is its left door, or its upper door when the spine is at the top.
 *
 * @returns the panel's own name by the other one; none for a fold that stands one way only.
 */
export function turningNames({ choices }: FoldStyle, panels: Panels): ReadonlyMap<string, string> {
  const names = choices && 'spine' in choices ? Object.keys(panels) : []
  return new Map(
    names.flatMap((name) => {
      const [side = '', ...rest] = name.split(' ')
      const word = side in turning ? turning[side as keyof typeof turning] : undefined
      return word && rest.length > 0 ? [[[word, ...rest].join(' '), name] as const] : []
    }),
  )
}
