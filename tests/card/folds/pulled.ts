import type { Bond, Structure } from '../../../src/card/structure.ts'
import type { Closed, Laid } from '../../../src/fold/pose.ts'
import { shutCard } from '../../../src/fold/prove.ts'
import { plus } from '../../../src/length/length.ts'

/** The card with everything that slides pulled out as far as it goes. */
export const pulled = (structure: Structure): Structure => ({
  ...structure,
  bonds: structure.bonds.map((bond): Bond => {
    const { at, slide } = bond
    return slide ? { ...bond, at: { x: plus(at.x, slide.x), y: plus(at.y, slide.y) } } : bond
  }),
})

/** The card shut; it must shut. */
export function shut(structure: Structure): Closed {
  const closed = shutCard(structure)
  if (!closed) throw new Error('The card does not shut')
  return closed
}

export function laidIn({ plates }: Closed, name: string): Laid {
  const laid = plates.find(({ plate }) => plate === name)
  if (!laid) throw new Error(`no plate ${name}`)
  return laid
}

/** Where a plate lies, in mm from the lower left corner of another one: left, bottom, right, top. */
export function placeOn(closed: Closed, name: string, ground: string): number[] {
  const [own, under] = [laidIn(closed, name), laidIn(closed, ground)]
  const left = own.left.sub(under.left)
  const bottom = own.bottom.sub(under.bottom)
  return [left, bottom, left.add(own.size.width), bottom.add(own.size.height)].map(Number)
}
